#!/usr/bin/env bash
# Runs all tests. Installs Chromium, Jupyter and its .NET (C#) kernel where it may; else the tests that need them are
# skipped and say so. ANALYTICS_NO_SKIPS=1 makes a missing program a failure.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
export PATH="$PATH:$HOME/.dotnet/tools"

has() { command -v "$1" >/dev/null 2>&1; }
has_browser() { has chromium || has chromium-browser || has google-chrome || [ -n "${ANALYTICS_CHROMIUM:-}" ]; }
has_nbformat() { /usr/bin/python3 -c 'import nbformat' 2>/dev/null || python3 -c 'import nbformat' 2>/dev/null; }
has_kernel() { has jupyter-kernelspec && has dotnet-interactive && [[ "$(jupyter-kernelspec list --json 2>/dev/null)" == *'".net-csharp"'* ]]; }

install_programs() {
  local wanted=()
  has_browser || wanted+=(chromium)
  has jupyter-nbconvert || wanted+=(jupyter-nbconvert)
  has jupyter-kernelspec || wanted+=(jupyter-client python3-ipykernel)
  has_nbformat || wanted+=(python3-nbformat)
  if [ ${#wanted[@]} -gt 0 ] && has apt-get; then
    local as_root=()
    [ "$(id -u)" = 0 ] || as_root=(sudo -n)
    if [ ${#as_root[@]} -eq 0 ] || sudo -n true 2>/dev/null; then
      echo "Installing ${wanted[*]}"
      "${as_root[@]}" apt-get update -qq && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${wanted[@]}" >/dev/null
    fi
  fi
  if has jupyter-nbconvert && ! has dotnet-interactive; then
    echo "Installing the .NET kernel for Jupyter"
    dotnet tool install --global Microsoft.dotnet-interactive --version 1.0.712001 >/dev/null
  fi
  if has dotnet-interactive && has jupyter-kernelspec && ! has_kernel; then
    dotnet-interactive jupyter install >/dev/null
  fi
}

say_missing() {
  local missing=()
  has_browser || missing+=("Chromium: the browser tests")
  { has jupyter-nbconvert && has_kernel; } || missing+=("Jupyter with the .NET (C#) kernel: the Jupyter tests")
  has_nbformat || missing+=("python3-nbformat: the notebook format tests")
  for each in "${missing[@]}"; do echo "Not found, so skipped: $each"; done
  if [ ${#missing[@]} -gt 0 ] && [ "${ANALYTICS_NO_SKIPS:-}" = 1 ]; then
    echo "Skips are forbidden here (ANALYTICS_NO_SKIPS=1)."
    exit 1
  fi
}

install_programs
say_missing

log=$(mktemp)
trap 'rm -f "$log"' EXIT
dotnet build Analytics.sln -c Release -v quiet -nologo || exit 1
# One project at a time: the acceptance tests drive whole programs and want the cores for themselves.
dotnet test Analytics.sln -c Release --no-build --nologo -m:1 2>&1 | tee "$log"
code=${PIPESTATUS[0]}

count() { sed -n "s/.* $1: *\([0-9][0-9]*\),.*/\1/p" "$log" | awk '{ sum += $1 } END { print sum + 0 }'; }
passed=$(count Passed) failed=$(count Failed) skipped=$(count Skipped)
echo
echo "$passed passed, $failed failed, $skipped skipped"
if [ "$passed" -eq 0 ]; then echo "No test ran."; exit 1; fi
if [ "$skipped" -gt 0 ] && [ "${ANALYTICS_NO_SKIPS:-}" = 1 ]; then echo "Skips are forbidden here (ANALYTICS_NO_SKIPS=1)."; exit 1; fi
exit "$code"
