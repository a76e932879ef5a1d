#!/usr/bin/env bash
# Unpacks the source of yaml-cpp, which the distribution packages only compiled, into the folder $1/yaml-cpp. The lists
# of sources are fetched into $1 too, so that those of the machine stay as they are, and nobody has to be root.
set -eu
mkdir -p "$1/parts" "$1/lists/partial" "$1/cache/archives/partial"
cd "$1"
for list in /etc/apt/sources.list.d/debian.sources /etc/apt/sources.list.d/ubuntu.sources; do
  if [ -f "$list" ]; then sed 's/^Types:.*/Types: deb-src/' "$list" >"parts/$(basename "$list")"; fi
done
if [ -f /etc/apt/sources.list ]; then sed -n 's/^deb /deb-src /p' /etc/apt/sources.list >parts/system.list; fi
options=(-qq -o Dir::Etc::SourceList=/dev/null -o "Dir::Etc::SourceParts=$PWD/parts" -o "Dir::State::Lists=$PWD/lists"
  -o "Dir::Cache=$PWD/cache" -o APT::Sandbox::User=)
apt-get "${options[@]}" update
rm -rf yaml-cpp yaml-cpp-*/ fetched
mkdir fetched
(cd fetched && apt-get "${options[@]}" source yaml-cpp)
mv fetched/yaml-cpp-*/ yaml-cpp
rm -rf fetched
