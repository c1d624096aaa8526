// SPDX-License-Identifier: MIT
// A short run of a fuzzer with any compiler: seeds of its kind, bent by chance. The long runs are
// done with clang's own driver (CMakeLists.txt).
//   short_run_record [RUNS [SEED]]
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size);

namespace {

const std::vector<std::string> seeds{
    "time,kiln C\n2026-11-25T09:00:00Z,20.5\n2026-11-25T09:01:00Z,800\n2026-11-25T09:02:00Z,805\n",
    "# logger\nelapsed s;TC1 F;TC2 F\n0;70,5;71\n30;1475,0;1470\n60;1480;---\n",
    "Date\tTime\tTemp [C]\n25.11.2026\t07:51:00\t799.5\n25.11.2026\t07:52:00\t801\n",
    "07:51:00,20\n07:52:00,25\n07:51:30,30\n23:59:00,900\n00:01:00,890\n",
    "C:0.95,Mn:0.3,Si:0.2",
    "temper\nsteps=204C/120min,204C/2h\nc=20\n",
    "blend\nparts=W1:0.6,(C:0.7,Ni:2):0.4\n",
    "advice\ngrade=O1\noperation=harden\nat_c=800\nbath=oil\nsection_mm=4\n",
    "phases\ncarbon_wt=0.95\ntemperature_c=1475F\n",
    "etchant\nhave_be=42\nwant_wt=10\nmake_ml=1000\n",
    "layers\nstart=7\noperations=cut2,fold\nthickness_mm=30\n",
    "carbon\nsurface_wt=1.2\ninitial_wt=0.25\ntemperature_c=950\nhours=7\ndepth_mm=0.5\n"};
const std::vector<std::string> tokens{"\n",
                                      ",",
                                      ";",
                                      "\t",
                                      "|",
                                      "-",
                                      "nan",
                                      "1e308",
                                      "-1",
                                      "0",
                                      ":",
                                      "=",
                                      "F",
                                      "C",
                                      "2026-02-30",
                                      "24:00:00",
                                      "\"",
                                      "#",
                                      "99999999999999999999",
                                      "%",
                                      "(",
                                      ")",
                                      "/",
                                      "inf",
                                      "\r\n",
                                      std::string(1, '\0'),
                                      "\xff"};

class Bender {
 public:
  explicit Bender(std::uint64_t seed) : chance_(seed) {}

  std::string next() {
    std::string text = seeds[below(seeds.size())];
    for (std::size_t i = below(6); i > 0; --i) bend(text);
    return text;
  }

 private:
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(chance_() % n); }

  void bend(std::string& text) {
    const std::size_t at = below(text.size() + 1);
    switch (below(5)) {
      case 0:
        text.insert(at, tokens[below(tokens.size())]);
        break;
      case 1:
        text.erase(at, below(8));
        break;
      case 2:
        if (at < text.size()) text[at] = static_cast<char>(below(256));
        break;
      case 3:
        text.insert(at, text.substr(below(text.size() + 1), below(60)));
        break;
      default:
        text += seeds[below(seeds.size())];
        break;
    }
  }

  std::mt19937_64 chance_;
};

}  // namespace

int main(int count, char** words) {
  const long runs = count > 1 ? std::atol(words[1]) : 20'000;
  Bender bender(count > 2 ? static_cast<std::uint64_t>(std::atoll(words[2])) : 1);
  for (long i = 0; i < runs; ++i) {
    const std::string text = bender.next();
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
  }
  std::cout << runs << " runs without a fault\n";
}
