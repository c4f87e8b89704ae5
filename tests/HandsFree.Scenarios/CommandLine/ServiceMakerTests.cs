using HandsFree.App.Composition;
using HandsFree.App.Hear;
using HandsFree.App.Hearing;
using HandsFree.App.Homes;
using HandsFree.App.Unlocking;
using Microsoft.Extensions.DependencyInjection;
using Shouldly;
using Xunit;

namespace HandsFree.Scenarios.CommandLine;

public sealed class ServiceMakerTests
{
    public static TheoryData<Type> Services =>
    [
        typeof(TimeProvider), typeof(ProgramPaths), typeof(HomeFolder), typeof(ProgramLog), typeof(HomeOpening), typeof(GrammarShelf), typeof(Engines),
        typeof(FileHearing), typeof(Unlocker),
    ];

    [Theory]
    [MemberData(nameof(Services))]
    public void What_a_command_asks_for_can_be_made(Type service)
    {
        using TemporaryHome home = new();
        using ServiceProvider services = ServiceMaker.Make(CommandRun.Quiet, home.Path);

        services.GetRequiredService(service).ShouldNotBeNull();
        services.GetRequiredService<HomeFolder>().Path.ShouldBe(home.Path);
    }
}
