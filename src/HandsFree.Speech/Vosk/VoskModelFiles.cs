namespace HandsFree.Speech.Vosk;

/// <summary>Looks at a model folder before the native library does, which ends the process on a broken one.</summary>
internal static class VoskModelFiles
{
    private static readonly string[] Needed =
    [
        "am/final.mdl", "conf/mfcc.conf", "conf/model.conf", "graph/HCLr.fst", "graph/Gr.fst", "graph/phones/word_boundary.int",
    ];

    /// <summary>Null when all files are there and none is empty, else one line that names what is missing.</summary>
    internal static string? WhyNot(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return $"the Vosk model is not installed (no folder {folder}); models-readme says where to get it";
        }

        string? missing = Needed.FirstOrDefault(name => new FileInfo(Path.Combine(folder, name)) is not { Exists: true, Length: > 0 });
        return missing is null
            ? null
            : $"{folder} is no Vosk model that can take a grammar: {missing} is missing or empty; unpack a small model again";
    }
}
