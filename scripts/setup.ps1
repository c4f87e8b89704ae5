# Fetches what is missing on Windows, says what and why, and goes on where something can't be had; setup.sh is the same
# elsewhere. The read-back speaks with Windows' own voice and the built-in engine needs nothing, so that two things are left.
#   setup.ps1           does nothing when nothing is missing; what failed within the last day is named, not tried again
#   setup.ps1 -Again    tries that too
# A package file laid into the folder downloads of HANDSFREE_TOOLS by hand is used instead of fetching it.
param([switch] $Again)
$ErrorActionPreference = 'Stop'
. (Join-Path $PSScriptRoot 'setup/steps.ps1')
. (Join-Path $PSScriptRoot 'setup/npm.ps1')

New-Item -ItemType Directory -Force $tools | Out-Null
if ($Again) { Remove-Item -Recurse -Force (Join-Path $tools 'failed') -ErrorAction SilentlyContinue }

Invoke-Step 'vosk' { Test-Vosk } { Install-Vosk }
Invoke-Step 'vad' { Test-Vad } { Install-Vad }
exit 0
