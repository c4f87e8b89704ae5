using HandsFree.Audio.Endpointing;

namespace HandsFree.Audio.Tests.Endpointing;

/// <summary>An endpointer over a scripted detector, fed with samples that count up by little, so that each tells where it came from and all are as loud.</summary>
internal sealed class EndpointerRun
{
    public const int Frame = ISpeechDetector.FrameSamples;

    private readonly string _script;
    private readonly Action<Endpointer, EndpointEvent>? _answer;
    private int _fed;

    public EndpointerRun(string script, EndpointerOptions? options = null, Action<Endpointer, EndpointEvent>? answer = null)
    {
        (_script, _answer) = (script, answer);
        Detector = new ScriptedDetector(script);
        Endpointer = new Endpointer(Detector, options ?? new EndpointerOptions(), Take);
    }

    public ScriptedDetector Detector { get; }

    public Endpointer Endpointer { get; }

    public List<EndpointEvent> Events { get; } = [];

    /// <summary>The segments that were ended.</summary>
    public List<SpeechSegment> Segments => [.. Events.OfType<EndpointEvent.SpeechEnded>().Select(ended => ended.Segment)];

    /// <summary>The value of the sample at a position; never 0.</summary>
    public static float SampleAt(long position) => 0.5f + ((position + 1) / 1_000_000f);

    public EndpointerRun Feed(int samples, int pieces = 320)
    {
        for (int rest = samples; rest > 0; rest -= pieces)
        {
            float[] piece = [.. Enumerable.Range(_fed, Math.Min(pieces, rest)).Select(at => SampleAt(at) * (IsSoft(at) ? 0.1f : 1))];
            _fed += piece.Length;
            Endpointer.Feed(piece);
        }

        return this;
    }

    /// <summary>The events by name, in order.</summary>
    public string Story() => string.Join(" ", Events.Select(e => e.GetType().Name));

    private bool IsSoft(int at) => at / Frame < _script.Length && _script[at / Frame] == 's';

    private void Take(EndpointEvent e)
    {
        Events.Add(e);
        _answer?.Invoke(Endpointer, e);
    }
}
