#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The same model and readings in JAGS and in Crownring, both on one core: equal posteriors, and effective draws a second.
#     ageing_against_jags.sh PROGRAM FOLDER [SWEEPS]     PROGRAM is crownring_ageing_bench; FOLDER is made and filled
set -eu
program=$1
folder=$2
sweeps=${3:-10000}
model=$(dirname "$(realpath "$0")")/ageing.bug
mkdir -p "$folder"
"$program" write "$folder"
cp "$model" "$folder/ageing.bug"
cd "$folder"
cat > ageing.cmd <<EOF
load glm
model in "ageing.bug"
data in "ageing.data"
compile, nchains(2)
parameters in "ageing.inits"
initialize
update 1000
monitor fabricIntercept
monitor fabricSlope
monitor spreadLotIntercept
monitor spreadLotSlope
monitor spreadSetIntercept
monitor spreadSetSlope
monitor scatter
monitor gamma
monitor phi
monitor intercept
monitor slope
update $sweeps
coda *
EOF
begun=$(date +%s.%N)
jags ageing.cmd > ageing.log
ended=$(date +%s.%N)
"$program" compare "$folder" "$(echo "$ended - $begun" | bc)"
