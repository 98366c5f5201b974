#!/usr/bin/env bash
# Builds the baseline, CVODE on a network file, in two variants:
#   out/bench/cv-debian   the program with -O3 -march=native, linked with Debian's SUNDIALS and SuiteSparse
#   out/bench/cv-native   the same, with CVODE, KLU and their parts rebuilt from Debian's sources with -O3 -march=native
# Needs root or sudo where packages are missing. Use of a program:
#   NLC=0.01 out/bench/cv-debian train-00.net klu|dense RTOL ATOL REPETITIONS -|FILE [LANE [0 [SAMPLE]]]
# NLC sets CVODE's Newton coefficient: 0.01 is the tuned baseline, unset its default. LANE varies the problem, SAMPLE 0 stops at events only.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
out=$here/../../out/bench
mkdir -p "$out"
sudo=()
[ "$(id -u)" = 0 ] || sudo=(sudo)
flags=(-O3 -march=native -fno-math-errno -w)
includes=(-I/usr/include/suitesparse -I/usr/lib/x86_64-linux-gnu/openmpi/include)

if ! [ -e /usr/include/cvode/cvode.h ] || ! [ -e /usr/include/suitesparse/klu.h ] || ! command -v gcc >/dev/null; then
  "${sudo[@]}" apt-get -qq update
  DEBIAN_FRONTEND=noninteractive "${sudo[@]}" apt-get -qq install -y --no-install-recommends gcc libc6-dev dpkg-dev libsundials-dev libsuitesparse-dev >/dev/null
fi

gcc "${flags[@]}" "${includes[@]}" -o "$out/cv-debian" "$here/cv.c" -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense \
  -lsundials_sunmatrixband -lsundials_sunmatrixsparse -lsundials_sunlinsoldense -lsundials_sunlinsolband -lsundials_sunlinsolklu -lklu -lm

# The same sources as Debian's packages, through the machine's own list of archives.
fetch_sources() {
  mkdir -p "$out/apt/parts" "$out/apt/lists/partial" "$out/sources"
  for list in /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list; do
    [ -f "$list" ] && sed -E 's/^Types: deb$/Types: deb-src/; s/^deb /deb-src /' "$list" >"$out/apt/parts/$(basename "$list")" || true
  done
  local options=(-o Dir::Etc::sourcelist=/dev/null -o "Dir::Etc::sourceparts=$out/apt/parts" -o "Dir::State::lists=$out/apt/lists")
  apt-get "${options[@]}" -qq update
  (cd "$out/sources" && apt-get "${options[@]}" -qq source --download-only sundials suitesparse 2>/dev/null && for f in *.orig.tar.*; do tar -xf "$f"; done)
}
[ -d "$out/sources" ] && ls "$out"/sources/*/ >/dev/null 2>&1 || fetch_sources
sundials=$(ls -d "$out"/sources/sundials*/ | head -n 1)
suitesparse=$(ls -d "$out"/sources/[Ss]uite[Ss]parse*/ | head -n 1)

objects=$out/objects
# The generated headers come from the installed package, without its MPI: one process needs none.
mkdir -p "$out/include/sundials"
sed 's/^#define SUNDIALS_MPI_ENABLED 1/#define SUNDIALS_MPI_ENABLED 0/' /usr/include/sundials/sundials_config.h >"$out/include/sundials/sundials_config.h"
includes=("-I$out/include" "-I$sundials/include" "${includes[@]}")
rm -rf "$objects" && mkdir -p "$objects"
compile() { # prefix, options…, then files after --
  local prefix=$1 options=() file; shift
  while [ "$1" != -- ]; do options+=("$1"); shift; done
  shift
  for file in "$@"; do
    gcc -c "${flags[@]}" "${options[@]}" -o "$objects/$prefix-$(basename "$file" .c).o" "$file"
  done
}
s=$sundials/src
core=()
for name in context direct errors futils iterative linearsolver logger math matrix memory nonlinearsolver nvector nvector_senswrapper version band dense profiler; do
  [ -f "$s/sundials/sundials_$name.c" ] && core+=("$s/sundials/sundials_$name.c")
done
compile sundials "${includes[@]}" "-I$s/sundials" "-I$s" -- "${core[@]}"
for part in cvode nvector/serial sunmatrix/dense sunmatrix/band sunmatrix/sparse sunlinsol/dense sunlinsol/band sunlinsol/klu sunnonlinsol/newton sunnonlinsol/fixedpoint; do
  files=()
  for file in "$s/$part"/*.c; do
    case "$file" in */fmod/* | *hypamg* | */f[ns]*) ;; *) files+=("$file") ;; esac
  done
  compile "${part//\//-}" "${includes[@]}" "-I$s/sundials" "-I$s" "-I$s/$part" -- "${files[@]}"
done
for part in KLU AMD COLAMD BTF; do
  compile "$part" -DDLONG "-I$suitesparse/$part/Include" "-I$suitesparse/AMD/Include" "-I$suitesparse/COLAMD/Include" "-I$suitesparse/BTF/Include" \
    "-I$suitesparse/SuiteSparse_config" -- "$suitesparse/$part"/Source/*.c
done
compile config "-I$suitesparse/SuiteSparse_config" -- "$suitesparse/SuiteSparse_config/SuiteSparse_config.c"
gcc "${flags[@]}" "${includes[@]}" -o "$out/cv-native" "$here/cv.c" "$objects"/*.o -lm
echo "$out/cv-debian $out/cv-native"
