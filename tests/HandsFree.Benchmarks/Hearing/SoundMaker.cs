using HandsFree.Benchmarks.Microphone;
using HandsFree.Benchmarks.Noise;
using HandsFree.Benchmarks.Recordings;

namespace HandsFree.Benchmarks.Hearing;

/// <summary>What becomes of a recording before it is heard: the room, the noise, the microphone.</summary>
/// <param name="microphone">What room and microphone do, or null.</param>
/// <param name="noise">Noise to mix in, or null.</param>
/// <param name="seed">Of the room.</param>
internal sealed class SoundMaker(MicrophoneFaults? microphone, NoiseMaker? noise, int seed)
{
    /// <summary>The sound that is heard; the same for the same recording, whatever else is heard.</summary>
    /// <param name="recorded">16 kHz mono.</param>
    /// <param name="of">Which recording it is.</param>
    /// <param name="folder">All recordings of its folder.</param>
    public float[] Of(float[] recorded, Transcript of, IReadOnlyList<Transcript> folder)
    {
        float[] sound = microphone?.InRoom(recorded, ClipSeed.Of(seed, "room", of.Key)) ?? recorded;
        sound = noise?.Under(sound, of, folder) ?? sound;
        return microphone?.AtMicrophone(sound, MicrophoneFaults.Onset(recorded)) ?? sound;
    }
}
