using HandsFree.App.Composition;
using HandsFree.App.Hearing;
using HandsFree.Audio.Endpointing;
using HandsFree.Audio.Wav;
using HandsFree.Language.Grammars;
using HandsFree.Speech;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Hear;

/// <summary>Hears recordings with one engine under one grammar.</summary>
internal sealed class FileHearer(IRecognizer recognizer, Grammar grammar, IServiceProvider services)
{
    private readonly FileHearing speech = services.GetRequiredService<FileHearing>();
    private readonly TimeProvider time = services.GetRequiredService<TimeProvider>();
    private readonly ProgramLog log = services.GetRequiredService<ProgramLog>();

    /// <summary>Something that the user should know of how speech is found, or null.</summary>
    public string? Remark => speech.WhyNotBetter;

    /// <summary>Makes engine and grammar ready.</summary>
    /// <returns>Null, or why the engine can't listen for this grammar.</returns>
    public string? WhyNot()
    {
        try
        {
            recognizer.Prepare(grammar);
            return null;
        }
        catch (GrammarException cannot)
        {
            return cannot.Message;
        }
    }

    /// <summary>Hears one recording.</summary>
    /// <returns>What was heard, or one line that names the file and the reason.</returns>
    public (HeardFile? Heard, string? Error) Hear(string file)
    {
        WavResult read = WavReader.Read(file);
        if (!read.IsRead)
        {
            return (null, read.Error);
        }

        SpeechSegment? segment = speech.Speech(read.Clip);
        long begun = time.GetTimestamp();
        Speech.Hearing hearing = segment is null ? Speech.Hearing.Nothing : recognizer.Hear(segment.Samples, grammar);
        TimeSpan decoding = segment is null ? TimeSpan.Zero : time.GetElapsedTime(begun);
        log.Note(LogKind.Decoded, decoding);
        return (new HeardFile(file, recognizer.Name, hearing, read.Clip.Duration, decoding), null);
    }
}
