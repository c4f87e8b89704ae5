# Builds the whole solution (Release), runs every test and ends with one line: N passed, N failed, N skipped. For Windows;
# test.sh is the same elsewhere. Called by handsfree.cmd; the first argument is the word test, the others go to 'dotnet test'.
$ErrorActionPreference = 'Stop'
Set-Location $env:HANDSFREE_ROOT

& dotnet build HandsFree.sln -c Release --nologo -v quiet -clp:NoSummary
if ($LASTEXITCODE -ne 0) {
    [Console]::Error.WriteLine('handsfree test: the build failed, no test was run.')
    Write-Output '0 passed, 1 failed, 0 skipped'
    exit 2
}

$count = @{ succeeded = 0; failed = 0; error = 0; skipped = 0 }
$more = @($args | Select-Object -Skip 1)
& dotnet test --solution HandsFree.sln -c Release --no-build @more | ForEach-Object {
    Write-Output $_
    if ($_ -match '^Test run summary:') { foreach ($key in @($count.Keys)) { $count[$key] = 0 } }
    if ($_ -match '^\s*(succeeded|failed|error|skipped):\s*(\d+)\s*$') { $count[$Matches[1]] += [int]$Matches[2] }
}
$code = $LASTEXITCODE
$failed = $count.failed + $count.error
if ($code -ne 0 -and $failed -eq 0) { $failed = 1 }
Write-Output ('{0} passed, {1} failed, {2} skipped' -f $count.succeeded, $failed, $count.skipped)
exit $code
