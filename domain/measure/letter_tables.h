// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

// One letter for each code point of a run, in order; sixteen in a row. Letters without a small form
// or without a plain one stand for themselves.
// Source: Unicode Character Database 14.0 (simple lower case mapping; canonical decomposition, of
// which the marks are dropped).
namespace tangmark::letters {

/// From U+00C0: small letters of Latin-1 Supplement, Latin Extended-A and B.
inline constexpr std::u16string_view latin_small =
    u"àáâãäåæçèéêëìíîï"
    u"ðñòóôõö×øùúûüýþß"
    u"àáâãäåæçèéêëìíîï"
    u"ðñòóôõö÷øùúûüýþÿ"
    u"āāăăąąććĉĉċċččďď"
    u"đđēēĕĕėėęęěěĝĝğğ"
    u"ġġģģĥĥħħĩĩīīĭĭįį"
    u"iıĳĳĵĵķķĸĺĺļļľľŀ"
    u"ŀłłńńņņňňŉŋŋōōŏŏ"
    u"őőœœŕŕŗŗřřśśŝŝşş"
    u"ššţţťťŧŧũũūūŭŭůů"
    u"űűųųŵŵŷŷÿźźżżžžſ"
    u"ƀɓƃƃƅƅɔƈƈɖɗƌƌƍǝə"
    u"ɛƒƒɠɣƕɩɨƙƙƚƛɯɲƞɵ"
    u"ơơƣƣƥƥʀƨƨʃƪƫƭƭʈư"
    u"ưʊʋƴƴƶƶʒƹƹƺƻƽƽƾƿ"
    u"ǀǁǂǃǆǆǆǉǉǉǌǌǌǎǎǐ"
    u"ǐǒǒǔǔǖǖǘǘǚǚǜǜǝǟǟ"
    u"ǡǡǣǣǥǥǧǧǩǩǫǫǭǭǯǯ"
    u"ǰǳǳǳǵǵƕƿǹǹǻǻǽǽǿǿ"
    u"ȁȁȃȃȅȅȇȇȉȉȋȋȍȍȏȏ"
    u"ȑȑȓȓȕȕȗȗșșțțȝȝȟȟ"
    u"ƞȡȣȣȥȥȧȧȩȩȫȫȭȭȯȯ"
    u"ȱȱȳȳȴȵȶȷȸȹⱥȼȼƚⱦȿ"
    u"ɀɂɂƀʉʌɇɇɉɉɋɋɍɍɏɏ";
/// From U+00C0: small letters without marks of Latin-1 Supplement, Latin Extended-A and B.
inline constexpr std::u16string_view latin_plain =
    u"aaaaaaæceeeeiiii"
    u"ðnooooo×øuuuuyþß"
    u"aaaaaaæceeeeiiii"
    u"ðnooooo÷øuuuuyþy"
    u"aaaaaaccccccccdd"
    u"đđeeeeeeeeeegggg"
    u"gggghhħħiiiiiiii"
    u"iıĳĳjjkkĸllllllŀ"
    u"ŀłłnnnnnnŉŋŋoooo"
    u"ooœœrrrrrrssssss"
    u"ssttttŧŧuuuuuuuu"
    u"uuuuwwyyyzzzzzzſ"
    u"ƀɓƃƃƅƅɔƈƈɖɗƌƌƍǝə"
    u"ɛƒƒɠɣƕɩɨƙƙƚƛɯɲƞɵ"
    u"ooƣƣƥƥʀƨƨʃƪƫƭƭʈu"
    u"uʊʋƴƴƶƶʒƹƹƺƻƽƽƾƿ"
    u"ǀǁǂǃǆǆǆǉǉǉǌǌǌaai"
    u"ioouuuuuuuuuuǝaa"
    u"aaææǥǥggkkooooʒʒ"
    u"jǳǳǳggƕƿnnaaææøø"
    u"aaaaeeeeiiiioooo"
    u"rrrruuuussttȝȝhh"
    u"ƞȡȣȣȥȥaaeeoooooo"
    u"ooyyȴȵȶȷȸȹⱥȼȼƚⱦȿ"
    u"ɀɂɂƀʉʌɇɇɉɉɋɋɍɍɏɏ";
/// From U+0370: small letters of Greek.
inline constexpr std::u16string_view greek_small =
    u"ͱͱͳͳʹ͵ͷͷ\u0378\u0379ͺͻͼͽ;ϳ"
    u"\u0380\u0381\u0382\u0383΄΅ά·έήί\u038Bό\u038Dύώ"
    u"ΐαβγδεζηθικλμνξο"
    u"πρ\u03A2στυφχψωϊϋάέήί"
    u"ΰαβγδεζηθικλμνξο"
    u"πρςστυφχψωϊϋόύώϗ"
    u"ϐϑϒϓϔϕϖϗϙϙϛϛϝϝϟϟ"
    u"ϡϡϣϣϥϥϧϧϩϩϫϫϭϭϯϯ"
    u"ϰϱϲϳθϵ϶ϸϸϲϻϻϼͻͼͽ";
/// From U+0370: small letters without marks of Greek.
inline constexpr std::u16string_view greek_plain =
    u"ͱͱͳͳʹ͵ͷͷ\u0378\u0379ͺͻͼͽ;ϳ"
    u"\u0380\u0381\u0382\u0383΄¨α·εηι\u038Bο\u038Dυω"
    u"ιαβγδεζηθικλμνξο"
    u"πρ\u03A2στυφχψωιυαεηι"
    u"υαβγδεζηθικλμνξο"
    u"πρσστυφχψωιυουωϗ"
    u"ϐϑϒϒϒϕϖϗϙϙϛϛϝϝϟϟ"
    u"ϡϡϣϣϥϥϧϧϩϩϫϫϭϭϯϯ"
    u"ϰϱϲϳθϵ϶ϸϸϲϻϻϼͻͼͽ";
/// From U+0400: small letters of Cyrillic and its supplement.
inline constexpr std::u16string_view cyrillic_small =
    u"ѐёђѓєѕіїјљњћќѝўџ"
    u"абвгдежзийклмноп"
    u"рстуфхцчшщъыьэюя"
    u"абвгдежзийклмноп"
    u"рстуфхцчшщъыьэюя"
    u"ѐёђѓєѕіїјљњћќѝўџ"
    u"ѡѡѣѣѥѥѧѧѩѩѫѫѭѭѯѯ"
    u"ѱѱѳѳѵѵѷѷѹѹѻѻѽѽѿѿ"
    u"ҁҁ҂\u0483\u0484\u0485\u0486\u0487\u0488\u0489ҋҋҍҍҏҏ"
    u"ґґғғҕҕҗҗҙҙққҝҝҟҟ"
    u"ҡҡңңҥҥҧҧҩҩҫҫҭҭүү"
    u"ұұҳҳҵҵҷҷҹҹһһҽҽҿҿ"
    u"ӏӂӂӄӄӆӆӈӈӊӊӌӌӎӎӏ"
    u"ӑӑӓӓӕӕӗӗәәӛӛӝӝӟӟ"
    u"ӡӡӣӣӥӥӧӧөөӫӫӭӭӯӯ"
    u"ӱӱӳӳӵӵӷӷӹӹӻӻӽӽӿӿ"
    u"ԁԁԃԃԅԅԇԇԉԉԋԋԍԍԏԏ"
    u"ԑԑԓԓԕԕԗԗԙԙԛԛԝԝԟԟ"
    u"ԡԡԣԣԥԥԧԧԩԩԫԫԭԭԯԯ";
/// From U+0400: small letters without marks of Cyrillic and its supplement.
inline constexpr std::u16string_view cyrillic_plain =
    u"ееђгєѕііјљњћкиуџ"
    u"абвгдежзииклмноп"
    u"рстуфхцчшщъыьэюя"
    u"абвгдежзииклмноп"
    u"рстуфхцчшщъыьэюя"
    u"ееђгєѕііјљњћкиуџ"
    u"ѡѡѣѣѥѥѧѧѩѩѫѫѭѭѯѯ"
    u"ѱѱѳѳѵѵѵѵѹѹѻѻѽѽѿѿ"
    u"ҁҁ҂\u0483\u0484\u0485\u0486\u0487\u0488\u0489ҋҋҍҍҏҏ"
    u"ґґғғҕҕҗҗҙҙққҝҝҟҟ"
    u"ҡҡңңҥҥҧҧҩҩҫҫҭҭүү"
    u"ұұҳҳҵҵҷҷҹҹһһҽҽҿҿ"
    u"ӏжжӄӄӆӆӈӈӊӊӌӌӎӎӏ"
    u"ааааӕӕееәәәәжжзз"
    u"ӡӡииииооөөөөээуу"
    u"ууууччӷӷыыӻӻӽӽӿӿ"
    u"ԁԁԃԃԅԅԇԇԉԉԋԋԍԍԏԏ"
    u"ԑԑԓԓԕԕԗԗԙԙԛԛԝԝԟԟ"
    u"ԡԡԣԣԥԥԧԧԩԩԫԫԭԭԯԯ";
/// From U+1E00: small letters of Latin Extended Additional.
inline constexpr std::u16string_view latin_additional_small =
    u"ḁḁḃḃḅḅḇḇḉḉḋḋḍḍḏḏ"
    u"ḑḑḓḓḕḕḗḗḙḙḛḛḝḝḟḟ"
    u"ḡḡḣḣḥḥḧḧḩḩḫḫḭḭḯḯ"
    u"ḱḱḳḳḵḵḷḷḹḹḻḻḽḽḿḿ"
    u"ṁṁṃṃṅṅṇṇṉṉṋṋṍṍṏṏ"
    u"ṑṑṓṓṕṕṗṗṙṙṛṛṝṝṟṟ"
    u"ṡṡṣṣṥṥṧṧṩṩṫṫṭṭṯṯ"
    u"ṱṱṳṳṵṵṷṷṹṹṻṻṽṽṿṿ"
    u"ẁẁẃẃẅẅẇẇẉẉẋẋẍẍẏẏ"
    u"ẑẑẓẓẕẕẖẗẘẙẚẛẜẝßẟ"
    u"ạạảảấấầầẩẩẫẫậậắắ"
    u"ằằẳẳẵẵặặẹẹẻẻẽẽếế"
    u"ềềểểễễệệỉỉịịọọỏỏ"
    u"ốốồồổổỗỗộộớớờờởở"
    u"ỡỡợợụụủủứứừừửửữữ"
    u"ựựỳỳỵỵỷỷỹỹỻỻỽỽỿỿ";
/// From U+1E00: small letters without marks of Latin Extended Additional.
inline constexpr std::u16string_view latin_additional_plain =
    u"aabbbbbbccdddddd"
    u"ddddeeeeeeeeeeff"
    u"gghhhhhhhhhhiiii"
    u"kkkkkkllllllllmm"
    u"mmmmnnnnnnnnoooo"
    u"oooopppprrrrrrrr"
    u"sssssssssstttttt"
    u"ttuuuuuuuuuuvvvv"
    u"wwwwwwwwwwxxxxyy"
    u"zzzzzzhtwyẚſẜẝßẟ"
    u"aaaaaaaaaaaaaaaa"
    u"aaaaaaaaeeeeeeee"
    u"eeeeeeeeiiiioooo"
    u"oooooooooooooooo"
    u"oooouuuuuuuuuuuu"
    u"uuyyyyyyyyỻỻỽỽỿỿ";
/// From U+1F00: small letters of Greek Extended.
inline constexpr std::u16string_view greek_extended_small =
    u"ἀἁἂἃἄἅἆἇἀἁἂἃἄἅἆἇ"
    u"ἐἑἒἓἔἕ\u1F16\u1F17ἐἑἒἓἔἕ\u1F1E\u1F1F"
    u"ἠἡἢἣἤἥἦἧἠἡἢἣἤἥἦἧ"
    u"ἰἱἲἳἴἵἶἷἰἱἲἳἴἵἶἷ"
    u"ὀὁὂὃὄὅ\u1F46\u1F47ὀὁὂὃὄὅ\u1F4E\u1F4F"
    u"ὐὑὒὓὔὕὖὗ\u1F58ὑ\u1F5Aὓ\u1F5Cὕ\u1F5Eὗ"
    u"ὠὡὢὣὤὥὦὧὠὡὢὣὤὥὦὧ"
    u"ὰάὲέὴήὶίὸόὺύὼώ\u1F7E\u1F7F"
    u"ᾀᾁᾂᾃᾄᾅᾆᾇᾀᾁᾂᾃᾄᾅᾆᾇ"
    u"ᾐᾑᾒᾓᾔᾕᾖᾗᾐᾑᾒᾓᾔᾕᾖᾗ"
    u"ᾠᾡᾢᾣᾤᾥᾦᾧᾠᾡᾢᾣᾤᾥᾦᾧ"
    u"ᾰᾱᾲᾳᾴ\u1FB5ᾶᾷᾰᾱὰάᾳ᾽ι᾿"
    u"῀῁ῂῃῄ\u1FC5ῆῇὲέὴήῃ῍῎῏"
    u"ῐῑῒΐ\u1FD4\u1FD5ῖῗῐῑὶί\u1FDC῝῞῟"
    u"ῠῡῢΰῤῥῦῧῠῡὺύῥ῭΅`"
    u"\u1FF0\u1FF1ῲῳῴ\u1FF5ῶῷὸόὼώῳ´῾\u1FFF";
/// From U+1F00: small letters without marks of Greek Extended.
inline constexpr std::u16string_view greek_extended_plain =
    u"αααααααααααααααα"
    u"εεεεεε\u1F16\u1F17εεεεεε\u1F1E\u1F1F"
    u"ηηηηηηηηηηηηηηηη"
    u"ιιιιιιιιιιιιιιιι"
    u"οοοοοο\u1F46\u1F47οοοοοο\u1F4E\u1F4F"
    u"υυυυυυυυ\u1F58υ\u1F5Aυ\u1F5Cυ\u1F5Eυ"
    u"ωωωωωωωωωωωωωωωω"
    u"ααεεηηιιοουυωω\u1F7E\u1F7F"
    u"αααααααααααααααα"
    u"ηηηηηηηηηηηηηηηη"
    u"ωωωωωωωωωωωωωωωω"
    u"ααααα\u1FB5ααααααα᾽ι᾿"
    u"῀¨ηηη\u1FC5ηηεεηηη᾿᾿᾿"
    u"ιιιι\u1FD4\u1FD5ιιιιιι\u1FDC῾῾῾"
    u"υυυυρρυυυυυυρ¨¨`"
    u"\u1FF0\u1FF1ωωω\u1FF5ωωοοωωω´῾\u1FFF";

}  // namespace tangmark::letters
