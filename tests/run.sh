#!/usr/bin/env bash
# Installs what is missing, builds, and runs every test. The last line is "N passed, N failed".
#   ./tests/run.sh              everything
#   ./tests/run.sh --sanitize   the same under AddressSanitizer and UndefinedBehaviorSanitizer
set -euo pipefail
cd "$(dirname "$0")/.."
build=build
options=()
if [ "${1:-}" = "--sanitize" ]; then
  build=build-sanitize
  # Plain -O0: the sanitizers make optimised window code very slow to compile.
  options=(-DCMAKE_BUILD_TYPE=Debug "-DCMAKE_CXX_FLAGS_DEBUG=-O0 -g1" -DTANGMARK_SANITIZE=address,undefined)
  export LSAN_OPTIONS="suppressions=$PWD/tests/sanitizer-quiet.txt:print_suppressions=0"
  export ASAN_OPTIONS="detect_stack_use_after_return=0"
fi
./tests/install.sh test
cmake -G Ninja -B "$build" -DTANGMARK_TESTS=ON -DCMAKE_UNITY_BUILD=ON "${options[@]}" >"$build.log" 2>&1 || { mkdir -p "$build"; cat "$build.log"; exit 1; }
rm -f "$build.log"
if ! ninja -C "$build"; then
  echo "The build failed."
  echo "0 passed, 1 failed"
  exit 1
fi
results="$build/test-results.txt"
status=0
ctest --test-dir "$build" -j "$(nproc)" --output-on-failure >"$results" 2>&1 || status=$?
grep -vE '^ *[0-9]+/[0-9]+ Test .* Passed|^ *Start ' "$results" || true
total=$(sed -nE 's/.* tests failed out of ([0-9]+).*/\1/p' "$results" | tail -1)
failed=$(sed -nE 's/.*passed, ([0-9]+) tests failed out of.*/\1/p' "$results" | tail -1)
total=${total:-0} failed=${failed:-1}
[ "$total" -gt 0 ] || { failed=1; status=1; }
[ "$total" -ge "$failed" ] || total=$failed
echo "$((total - failed)) passed, $failed failed"
exit "$status"
