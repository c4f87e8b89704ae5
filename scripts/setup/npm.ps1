# What comes out of npm packages on Windows: libvosk and the voice activity model. 'npm pack' only fetches the package's
# file; no script of a package is ever run. Sourced by setup.ps1.
$voskSha = 'f0acfb81236e492f29193ffbd1029204cd0af7107fca4e5e5a410432b3291ad3'
$vadSha = 'd1a211cf1a2ed26297da52cc08de79e75d79838a274bfc6de546feb1f828c940'
$voskFiles = @('libvosk.dll', 'libgcc_s_seh-1.dll', 'libstdc++-6.dll', 'libwinpthread-1.dll')
$vadFiles = @('silero_vad_v6.onnx')

# Lays the files of one folder of a package into the tools' folder $name.
function Install-FromNpm($name, $package, $version, $file, $sha, $inside, [string[]] $wanted, $without) {
    $folder = New-WorkFolder
    try {
        $kept = Join-Path $tools "downloads/$file"
        if (Test-Path $kept) {
            Copy-Item $kept $folder
        } else {
            $npm = Get-Command npm.cmd, npm -ErrorAction SilentlyContinue | Select-Object -First 1
            if (-not $npm) { throw "npm is not there to fetch $package $version; $without" }
            $code = Invoke-Quietly $folder $npm.Source @('pack', '--silent', '--ignore-scripts', '--fetch-retries=1', "$package@$version")
            if ($code -ne 0) { throw "npm could not fetch $package $version; $without" }
        }
        $archive = Join-Path $folder $file
        if (-not (Test-Path $archive)) { throw "npm did not deliver $file; $without" }
        $found = Get-Sha256 $archive
        if ($found -ne $sha) { throw "$file has SHA-256 $found, not $sha, and is not used; $without" }
        if ((Invoke-Quietly $folder 'tar' @('-xzf', $file)) -ne 0) { throw "$file can't be unpacked; $without" }
        New-Item -ItemType Directory -Force (Join-Path $tools $name) | Out-Null
        foreach ($each in $wanted) {
            Move-Item -Force (Join-Path $folder "package/$inside/$each") (Join-Path $tools "$name/$each")
        }
        Set-Stamp $name $sha
    } finally {
        Remove-Item -Recurse -Force $folder
    }
}

function Test-Vosk {
    (Test-Stamp 'vosk' $voskSha) -and -not ($voskFiles | Where-Object { -not (Test-Path (Join-Path $tools "vosk/$_")) })
}

function Install-Vosk {
    if ($env:PROCESSOR_ARCHITECTURE -and $env:PROCESSOR_ARCHITECTURE -ne 'AMD64') {
        throw "libvosk is not made for Windows on $($env:PROCESSOR_ARCHITECTURE); the other engines are not affected"
    }
    Write-Line 'set-up: fetching libvosk from the npm package vosk 0.3.39 (24 MB): the engine vosk, for small models ...'
    Install-FromNpm 'vosk' 'vosk' '0.3.39' 'vosk-0.3.39.tgz' $voskSha 'lib/win-x86_64' $voskFiles `
        'the engine vosk stays out, the other engines are not affected'
}

function Test-Vad { (Test-Stamp 'vad' $vadSha) -and (Test-Path (Join-Path $tools 'vad/silero_vad_v6.onnx')) }

function Install-Vad {
    Write-Line 'set-up: fetching Silero VAD v6 from the npm package @ricky0123/vad-web 0.0.31 (5 MB): where speech begins and ends ...'
    Install-FromNpm 'vad' '@ricky0123/vad-web' '0.0.31' 'ricky0123-vad-web-0.0.31.tgz' $vadSha 'dist' $vadFiles `
        'where speech begins and ends is found by its loudness instead'
}
