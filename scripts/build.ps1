# Builds the program (Release) when it was never built or when a source changed since the last build. For Windows;
# build.sh is the same elsewhere. Called by handsfree.cmd, which sets HANDSFREE_ROOT.
$ErrorActionPreference = 'Stop'
Set-Location $env:HANDSFREE_ROOT

# Beside what is built, not with the tools: those may be shared by several checkouts.
$made = Join-Path $env:HANDSFREE_ROOT '.handsfree'
$stamp = Join-Path $made 'built'
$program = Join-Path 'src' 'HandsFree.App/bin/Release/net10.0/HandsFree.dll'

# One line a source file: its path, size and time of writing.
function Get-SourceList {
    $files = @(Get-ChildItem -Path src, grammars -Recurse -File | Where-Object { $_.FullName -notmatch '[\\/](bin|obj)[\\/]' })
    $files += Get-Item Directory.Build.props, Directory.Packages.props, global.json, BannedSymbols.txt
    ($files | Sort-Object FullName | ForEach-Object { '{0} {1} {2}' -f $_.FullName, $_.Length, $_.LastWriteTimeUtc.Ticks }) -join "`n"
}

$list = Get-SourceList
if ((Test-Path $program) -and (Test-Path $stamp) -and ([IO.File]::ReadAllText($stamp) -eq $list)) { exit 0 }

New-Item -ItemType Directory -Force $made | Out-Null
$log = Join-Path $made 'build.log'
[Console]::Error.WriteLine('handsfree: building (first use, or a source changed) ...')
& dotnet build src/HandsFree.App -c Release --nologo -v quiet > $log
if ($LASTEXITCODE -ne 0) {
    Get-Content $log | Where-Object { $_ -match 'error' } | Sort-Object -Unique | Select-Object -First 20 |
        ForEach-Object { [Console]::Error.WriteLine($_) }
    [Console]::Error.WriteLine("handsfree: the build failed; the whole output is in $log")
    exit 2
}
[IO.File]::WriteAllText($stamp, $list)
exit 0
