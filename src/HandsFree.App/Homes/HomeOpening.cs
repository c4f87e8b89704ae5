using System.Diagnostics.CodeAnalysis;
using HandsFree.Core.Files;

namespace HandsFree.App.Homes;

/// <summary>What came of opening a home: the home, or every error of its files.</summary>
internal sealed class HomeOpening
{
    private HomeOpening(Home? home, IReadOnlyList<FileError> errors)
    {
        Home = home;
        Errors = errors;
    }

    /// <summary>The home; null where a file is broken.</summary>
    public Home? Home { get; }

    /// <summary>All that is wrong; empty where the home is there.</summary>
    public IReadOnlyList<FileError> Errors { get; }

    public static HomeOpening Of(Home home) => new(home, []);

    public static HomeOpening Broken(IReadOnlyList<FileError> errors) => new(null, errors);

    /// <summary>True with the home, false with what is wrong.</summary>
    public bool TryGet([NotNullWhen(true)] out Home? home)
    {
        home = Home;
        return home is not null;
    }
}
