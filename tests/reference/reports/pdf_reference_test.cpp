// SPDX-License-Identifier: MIT
// Checkers: qpdf (structure), poppler's pdftotext, pdffonts, pdfinfo, pdfdetach and pdftoppm, and
// zbarimg (codes). Each is another reader than the library that wrote the file.
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <cstdio>
#include <filesystem>
#include <string>

#include "reports/page_text.h"
#include "reports/pdf.h"
#include "samples.h"

namespace tangmark::reports::samples {

namespace {

using Catch::Contains;

// A folder of its own that is gone afterwards.
class Scratch {
 public:
  Scratch()
      : folder_(std::filesystem::temp_directory_path() /
                ("tangmark_reports_" + std::to_string(getpid()))) {
    std::filesystem::create_directories(folder_);
  }
  ~Scratch() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  std::string path(const std::string& name) const { return (folder_ / name).string(); }

 private:
  std::filesystem::path folder_;
};

struct Ran {
  int status = -1;
  std::string said;
};

Ran run(const std::string& command, const std::string& errors_to = "/dev/null") {
  Ran ran;
  FILE* pipe = popen((command + " 2>" + errors_to).c_str(), "r");
  REQUIRE(pipe != nullptr);
  std::array<char, 4096> part{};
  while (const std::size_t got = fread(part.data(), 1, part.size(), pipe)) {
    ran.said.append(part.data(), got);
  }
  ran.status = pclose(pipe);
  return ran;
}

std::string written(const Scratch& scratch, const Outcome<Document>& document) {
  REQUIRE(document.ok());
  const std::string path = scratch.path("paper.pdf");
  write_pdf(*document, fonts(), path);
  return path;
}

// Without any kind of space: a reader joins and splits runs at spaces as it likes, and turns thin
// no-break spaces into ordinary ones.
std::string without_spaces(std::string text) {
  for (const std::string space : {" ", "\n", "\f", "\r", "\u00A0", "\u2009", "\u202F"}) {
    for (std::size_t at = 0; (at = text.find(space, at)) != std::string::npos;) {
      text.erase(at, space.size());
    }
  }
  return text;
}

}  // namespace

TEST_CASE("qpdf finds no fault in any paper, ordinary or strained") {
  const Scratch scratch;
  const Strain strain = GENERATE(Strain::ordinary, Strain::hard);
  for (const Named& paper : every_document(strain, metric())) {
    INFO(paper.name);
    const std::string path = written(scratch, paper.document);
    CHECK(run("qpdf --check " + path).status == 0);
    CHECK_THAT(run("pdfinfo " + path).said,
               Contains("Pages:           " + std::to_string(paper.document->pages.size())));
  }
}

TEST_CASE("pdftotext reads every run of text back, in Latin, Greek and Cyrillic") {
  const Scratch scratch;
  const Strain strain = GENERATE(Strain::ordinary, Strain::hard);
  for (const Named& paper : every_document(strain, metric())) {
    INFO(paper.name);
    const std::string path = written(scratch, paper.document);
    // In raw order the text comes as it was drawn; runs may be joined or split at spaces.
    const std::string read = without_spaces(run("pdftotext -raw " + path + " -").said);
    CHECK(run("pdftotext " + path + " /dev/null", "&1").said.empty());  // no complaint of a font
    for (const Page& page : paper.document->pages) {
      for (const Element& element : page.elements) {
        const auto* text = std::get_if<TextRun>(&element);
        if (!text) continue;
        const std::string wanted = without_spaces(text->text);
        const bool found = read.find(wanted) != std::string::npos;
        if (!found) CHECK(wanted == "read back");
      }
    }
  }
}

TEST_CASE("all fonts are embedded as subsets with a way back to Unicode") {
  const Scratch scratch;
  const std::string path =
      written(scratch, certificate_document(certificate(Strain::ordinary), metric(), fonts()));
  const std::string said = run("pdffonts " + path).said;
  CHECK_THAT(said, Contains("NotoSerif") && Contains("NotoSans") && Contains("DejaVuSansMono"));
  CHECK_THAT(said, !Contains(" no "));  // columns emb, sub, uni
}

TEST_CASE("zbarimg reads the codes of certificate, traveller, firing sheet and labels") {
  const Scratch scratch;
  const auto codes = [&](const Outcome<Document>& document) {
    const std::string path = written(scratch, document);
    REQUIRE(run("pdftoppm -r 200 -png -f 1 -l 1 " + path + " " + scratch.path("page")).status == 0);
    return run("zbarimg --raw -q -Sdisable -Sqrcode.enable " + scratch.path("page-1.png")).said;
  };
  CHECK(codes(certificate_document(certificate(Strain::ordinary), metric(), fonts())) ==
        certificate(Strain::ordinary).seal.qr + "\n");
  CHECK(codes(firing_sheet_document(firing(Strain::ordinary), metric(), fonts())) ==
        firing(Strain::ordinary).qr + "\n");
  const std::string on_labels =
      codes(lot_labels(lots(Strain::ordinary), noon(), customary(), fonts()));
  for (const LotLabel& lot : lots(Strain::ordinary)) CHECK_THAT(on_labels, Contains(lot.qr + "\n"));
}

TEST_CASE("pdfinfo reads title, author and day, also in other scripts") {
  const Scratch scratch;
  QuotePaper paper = quote(Strain::hard);
  const std::string said =
      run("TZ=UTC pdfinfo " + written(scratch, quote_document(paper, metric(), fonts()))).said;
  CHECK_THAT(said, Contains("Quote 118, version 2"));
  CHECK_THAT(said, Contains("Мастерская ножей «Заречная кузница» и Σιδηρουργείο Βουνού"));
  CHECK_THAT(said, Contains("Tue Nov 24 11:00:00 2026"));
}

// The structure is read by poppler, which had no part in writing it.
TEST_CASE("pdfinfo reads the structure of every paper: headings, paragraphs, tables, figures") {
  const Scratch scratch;
  for (const Named& paper : every_document(Strain::ordinary, metric())) {
    INFO(paper.name);
    const std::string path = written(scratch, paper.document);
    CHECK_THAT(run("pdfinfo " + path).said, Contains("Tagged:          yes"));
    const Ran read = run("pdfinfo -struct " + path, "&1");
    CHECK_THAT(read.said, Contains("Document") && Contains("P"));
    CHECK_THAT(read.said, !Contains("rror"));
  }
  const std::string path =
      written(scratch, certificate_document(certificate(Strain::ordinary), metric(), fonts()));
  const std::string tree = run("pdfinfo -struct-text " + path).said;
  CHECK_THAT(tree, Contains("H1") && Contains("H2") && Contains("Table") && Contains("TR") &&
                       Contains("TH") && Contains("TD") && Contains("Figure"));
  // A heading, a statement of several lines in one paragraph, and a cell are read as such.
  CHECK_THAT(tree, Contains("\"Heat treatment\""));
  CHECK_THAT(without_spaces(tree), Contains("Level") && Contains("\"Normalize×3\""));
}

TEST_CASE("the XMP packet says what the information dictionary says, as XML that parses") {
  const Scratch scratch;
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.shop.shop = "Hammer & Tongs <Σίδερο>";
  const std::string path = written(scratch, certificate_document(cert, metric(), fonts()));
  REQUIRE(run("pdfinfo -meta " + path + " > " + scratch.path("meta.xml")).status == 0);
  const Ran parsed =
      run("python3 -c 'import sys, xml.dom.minidom as m; "
          "d = m.parse(sys.argv[1]); "
          "print(d.getElementsByTagName(\"dc:creator\")[0].getElementsByTagName(\"rdf:li\")[0]."
          "firstChild.data); "
          "print(d.getElementsByTagName(\"xmp:CreateDate\")[0].firstChild.data)' " +
          scratch.path("meta.xml"));
  CHECK(parsed.said == "Hammer & Tongs <Σίδερο>\n2026-11-24T11:00:00Z\n");
  CHECK_THAT(run("pdfinfo " + path).said, Contains("Metadata Stream: yes"));
}

TEST_CASE("pdfdetach takes the record out of the certificate as it was put in") {
  const Scratch scratch;
  const std::string path =
      written(scratch, certificate_document(certificate(Strain::ordinary), metric(), fonts()));
  CHECK_THAT(run("pdfdetach -list " + path).said, Contains("record.json"));
  REQUIRE(run("pdfdetach -save 1 -o " + scratch.path("out.json") + " " + path).status == 0);
  CHECK(run("cat " + scratch.path("out.json")).said == "{\"blade\":214}\n");
}

TEST_CASE("a photograph is in the certificate at no more than 300 dots per inch") {
  const Scratch scratch;
  BuildCertificate cert = certificate(Strain::ordinary);
  cert.photo = drawn_picture(3000, 900);
  const std::string path = written(scratch, certificate_document(cert, metric(), fonts()));
  const std::string said = run("pdfimages -list " + path).said;
  CHECK_THAT(said, Contains("jpeg"));
  CHECK_THAT(said, !Contains(" 3000 "));
}

}  // namespace tangmark::reports::samples
