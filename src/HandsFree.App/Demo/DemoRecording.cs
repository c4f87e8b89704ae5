using System.Text;
using HandsFree.App.Demo.Room;
using HandsFree.App.Demo.Script;
using HandsFree.Audio.Wav;

namespace HandsFree.App.Demo;

/// <summary>Keeps the whole exchange, sound and text, for --record. Waiting that was left out is not in it.</summary>
internal sealed class DemoRecording : IRoomWatcher
{
    private readonly List<float> aideSound = [];
    private readonly List<float> programSound = [];
    private readonly StringBuilder text = new();

    /// <summary>Adds a line of the transcript.</summary>
    public void Write(string line)
    {
        lock (text)
        {
            text.Append(line).Append('\n');
        }
    }

    /// <inheritdoc/>
    public void Speaks(DateTimeOffset at, DemoClip clip)
    {
        // The transcript has the line.
    }

    /// <inheritdoc/>
    public void MovesOn(DateTimeOffset at)
    {
        // The transcript has the line.
    }

    /// <inheritdoc/>
    public void Passed(ReadOnlySpan<float> aide, ReadOnlySpan<float> program)
    {
        aideSound.AddRange(aide);
        programSound.AddRange(program);
    }

    /// <summary>Writes exchange.wav (both), aide.wav, program.wav and exchange.txt.</summary>
    /// <returns>Null, or one line that says what can't be written.</returns>
    public string? Save(string folder)
    {
        try
        {
            Directory.CreateDirectory(folder);
            float[] both = [.. aideSound.Zip(programSound, (aide, program) => aide + program)];
            WavWriter.Write(Path.Combine(folder, "exchange.wav"), both);
            WavWriter.Write(Path.Combine(folder, "aide.wav"), aideSound.ToArray());
            WavWriter.Write(Path.Combine(folder, "program.wav"), programSound.ToArray());
            lock (text)
            {
                File.WriteAllText(Path.Combine(folder, "exchange.txt"), text.ToString());
            }

            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"{folder}: the recording can't be written ({e.Message.ReplaceLineEndings(" ")}); name another folder with --record";
        }
    }
}
