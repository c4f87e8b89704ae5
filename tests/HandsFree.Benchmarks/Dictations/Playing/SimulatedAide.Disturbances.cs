using HandsFree.Benchmarks.Dictations.Saying;
using HandsFree.Benchmarks.Dictations.Sound;

namespace HandsFree.Benchmarks.Dictations.Playing;

/// <content>What gets in the way: guesses, coughs, talk, silence, the resident, "stop".</content>
internal sealed partial class SimulatedAide
{
    private AideMove? Before()
    {
        if (current!.DisturbedBefore)
        {
            return null;
        }

        current.DisturbedBefore = true;
        double chance = random.NextDouble();
        return (chance -= habits.ChatBefore) < 0 ? Disturb(new Utterance(voice, Any(SmallTalk.Aide), Variant))
            : (chance -= habits.GuessBefore) < 0 ? Disturb(new Utterance(voice, sayings.Guess(voice, random.Next(6)), Variant))
            : chance - habits.CoughBefore < 0 ? Disturb(Cough())
            : null;
    }

    private AideMove? InsteadOfAnAnswer()
    {
        if (current is null || current.DisturbedInstead)
        {
            return null;
        }

        current.DisturbedInstead = true;
        double chance = random.NextDouble();
        if ((chance -= habits.Silent) < 0)
        {
            silent = true;
            current.Acts.Add(new Act(ActKind.Disturbance, false));
            return new AideMove.Wait();
        }

        if ((chance -= habits.Stop) < 0)
        {
            (standing, identified) = (null, false);
            return Disturb(new Utterance(voice, "stop", Variant));
        }

        return (chance -= habits.ChatInstead) < 0 ? Disturb(new Utterance(voice, Any(SmallTalk.Aide), Variant))
            : (chance -= habits.CoughInstead) < 0 ? Disturb(Cough())
            : chance - habits.ResidentInstead < 0 ? Disturb(new Utterance(residentVoice, Any(SmallTalk.Resident), Variant, habits.ResidentDecibels))
            : null;
    }

    private AideMove.Sound Disturb(Utterance utterance)
    {
        current!.Acts.Add(new Act(ActKind.Disturbance, false));
        return new AideMove.Sound(utterance);
    }

    private Utterance Cough() => new(Utterance.Cough, $"{random.Next(4)}", Variant);
}
