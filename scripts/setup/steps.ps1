# How a step of the set-up runs on Windows: its test says whether there is anything to do, its work does it or throws one
# line that says why not. Sourced by setup.ps1.
$root = if ($env:HANDSFREE_ROOT) { $env:HANDSFREE_ROOT } else { Split-Path (Split-Path $PSScriptRoot) }
$tools = if ($env:HANDSFREE_TOOLS) { $env:HANDSFREE_TOOLS } else { Join-Path $root '.handsfree' }
$models = if ($env:HANDSFREE_MODELS) { $env:HANDSFREE_MODELS } else { Join-Path $tools 'models' }

function Write-Line($text) { [Console]::Error.WriteLine($text) }

# Skips what is there; names, without trying, what failed within the last day. Never ends the set-up.
function Invoke-Step($name, $test, $work) {
    if (& $test) { return }
    $mark = Join-Path $tools "failed/$name"
    if ((Test-Path $mark) -and ((Get-Item $mark).LastWriteTime -gt (Get-Date).AddDays(-1))) {
        Write-Line ("set-up: {0} (tried within the last day; 'scripts\setup.ps1 -Again' tries again)" -f [IO.File]::ReadAllText($mark))
        return
    }
    try {
        & $work
        Remove-Item $mark -ErrorAction SilentlyContinue
    } catch {
        New-Item -ItemType Directory -Force (Join-Path $tools 'failed') | Out-Null
        [IO.File]::WriteAllText($mark, $_.Exception.Message)
        Write-Line ('set-up: ' + $_.Exception.Message)
    }
}

function Test-Stamp($name, $sha) {
    $file = Join-Path $tools "stamps/$name"
    (Test-Path $file) -and ([IO.File]::ReadAllText($file).Trim() -eq $sha)
}

function Set-Stamp($name, $sha) {
    New-Item -ItemType Directory -Force (Join-Path $tools 'stamps') | Out-Null
    [IO.File]::WriteAllText((Join-Path $tools "stamps/$name"), $sha)
}

function Get-Sha256($file) { (Get-FileHash -Algorithm SHA256 -LiteralPath $file).Hash.ToLowerInvariant() }

# An empty folder on the same disk as the tools.
function New-WorkFolder {
    $folder = Join-Path $tools ('tmp/' + [IO.Path]::GetRandomFileName())
    New-Item -ItemType Directory -Force $folder | Out-Null
    $folder
}

# Runs a program in a folder, silently; gives its exit code. Lines on stderr are no errors of the script.
function Invoke-Quietly($folder, $program, [string[]] $arguments) {
    Push-Location $folder
    $before = $ErrorActionPreference
    try {
        $script:ErrorActionPreference = 'Continue'
        & $program @arguments > (Join-Path $folder 'output.log') 2>&1
        $LASTEXITCODE
    } finally {
        $script:ErrorActionPreference = $before
        Pop-Location
    }
}
