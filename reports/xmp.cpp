// SPDX-License-Identifier: MIT
#include "reports/xmp.h"

#include "domain/measure/when.h"
#include "reports/markup.h"

namespace tangmark::reports {

namespace {

std::string in_language(const char* name, const std::string& text) {
  if (text.empty()) return {};
  return std::string("   <dc:") + name + "><rdf:Alt><rdf:li xml:lang=\"x-default\">" +
         escaped_markup(text) + "</rdf:li></rdf:Alt></dc:" + name + ">\n";
}

}  // namespace

std::string xmp_packet(const Document& document) {
  std::string packet =
      "<?xpacket begin=\"\xEF\xBB\xBF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
      "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n"
      " <rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
      "  <rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" "
      "xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
      "   <dc:format>application/pdf</dc:format>\n"
      "   <dc:language><rdf:Bag><rdf:li>en</rdf:li></rdf:Bag></dc:language>\n";
  packet += in_language("title", document.title) + in_language("description", document.subject);
  if (!document.author.empty())
    packet += "   <dc:creator><rdf:Seq><rdf:li>" + escaped_markup(document.author) +
              "</rdf:li></rdf:Seq></dc:creator>\n";
  const std::string day = to_stored(document.created);
  packet += "   <xmp:CreateDate>" + day + "</xmp:CreateDate>\n   <xmp:ModifyDate>" + day +
            "</xmp:ModifyDate>\n   <xmp:CreatorTool>Tangmark</xmp:CreatorTool>\n";
  return packet + "  </rdf:Description>\n </rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>\n";
}

}  // namespace tangmark::reports
