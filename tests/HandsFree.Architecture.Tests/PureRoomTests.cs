using ArchUnitNET.Domain;
using ArchUnitNET.Fluent;
using ArchUnitNET.Loader;
using ArchUnitNET.xUnitV3;
using Shouldly;
using Xunit;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace HandsFree.Architecture.Tests;

public sealed class PureRoomTests
{
    private static readonly string[] Rooms = ["HandsFree.Language", "HandsFree.Core", "HandsFree.Audio", "HandsFree.Speech", "HandsFree.Store", "HandsFree.Pages"];

    private static readonly ArchUnitNET.Domain.Architecture House = new ArchLoader()
        .LoadAssemblies([.. Rooms.Append("HandsFree").Select(System.Reflection.Assembly.Load)])
        .Build();

    // What reaches the clock, another thread, the user or the network.
    private const string Outside =
        @"^System\.(Console|Environment|Diagnostics\.(Process|Stopwatch)|Threading\.(Thread|Timer|ThreadPool)" +
        @"|Threading\.Tasks\.Task|Net\..*|TimeProvider)$";

    private const string Files = @"^System\.IO\.(File|FileInfo|FileStream|Directory|DirectoryInfo|FileSystemInfo)$";

    [Theory]
    [InlineData("HandsFree.Language")]
    [InlineData("HandsFree.Core")]
    [InlineData("HandsFree.Pages")]
    public void The_pure_rooms_reach_no_console_clock_thread_or_network(string room) => Reaches(room, Outside).Check(House);

    // The language room reads grammar files by name.
    [Theory]
    [InlineData("HandsFree.Core")]
    [InlineData("HandsFree.Pages")]
    public void The_core_and_the_pages_reach_no_file(string room) => Reaches(room, Files).Check(House);

    [Fact]
    public void A_room_that_reaches_outside_is_found()
    {
        Reaches("HandsFree.Store", Files).HasNoViolations(House).ShouldBeFalse();
        Reaches("HandsFree.Store", Outside).HasNoViolations(House).ShouldBeFalse();
    }

    [Fact]
    public void A_class_is_sealed_static_or_a_base() =>
        Classes().That().AreNotAbstract().And().ResideInNamespaceMatching(@"^HandsFree\.").And().DoNotHaveNameContaining("<")
            .Should().BeSealed()
            .Check(House);

    private static IArchRule Reaches(string room, string types) =>
        Types().That().ResideInAssembly(System.Reflection.Assembly.Load(room))
            .Should().NotDependOnAny(Types(includeReferenced: true).That().HaveFullNameMatching(types));
}
