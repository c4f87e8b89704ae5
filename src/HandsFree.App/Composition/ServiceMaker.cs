using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using Microsoft.Extensions.DependencyInjection;

namespace HandsFree.App.Composition;

/// <summary>The composition root: the only place that knows which class stands behind what a command asks for.</summary>
internal static class ServiceMaker
{
    /// <summary>The services of one run; disposing of them closes what was opened.</summary>
    /// <param name="surroundings">Streams, clock, environment.</param>
    /// <param name="homeFolder">What --home said, or null.</param>
    /// <param name="unlockDescriptor">What --unlock-fd said, or null.</param>
    /// <param name="emergency">What --emergency said, or null.</param>
    public static ServiceProvider Make(Surroundings surroundings, string? homeFolder, int? unlockDescriptor = null, string? emergency = null) => new ServiceCollection()
        .AddSingleton(surroundings)
        .AddSingleton(surroundings.Time)
        .AddSingleton<ProgramPaths>()
        .AddSingleton(services => new HomeFolder(
            homeFolder ?? services.GetRequiredService<ProgramPaths>().Home, services.GetRequiredService<ProgramPaths>().States))
        .AddSingleton(new Unlocker(surroundings, unlockDescriptor, emergency))
        .AddSingleton<ProgramLog>()
        .AddSingleton(services => Home.Open(services.GetRequiredService<HomeFolder>(), surroundings.Time.LocalTimeZone, services.GetRequiredService<Unlocker>()))
        .AddSingleton(services => new GrammarShelf(services.GetRequiredService<ProgramPaths>().Grammars))
        .AddSingleton<Engines>()
        .AddSingleton(services => new FileHearing(services.GetRequiredService<ProgramPaths>().Detector))
        .BuildServiceProvider();
}
