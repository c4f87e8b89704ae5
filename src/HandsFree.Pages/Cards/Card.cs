namespace HandsFree.Pages.Cards;

/// <summary>A card of two pages.</summary>
/// <param name="Title">Its name.</param>
/// <param name="Front">The parts of the first page.</param>
/// <param name="Back">The parts of the second.</param>
public sealed record Card(string Title, IReadOnlyList<CardPart> Front, IReadOnlyList<CardPart> Back);

/// <summary>A part of a card.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Lines">Its lines.</param>
public sealed record CardPart(string Heading, IReadOnlyList<CardLine> Lines);

/// <summary>A line of a card.</summary>
/// <param name="Say">What is said or heard.</param>
/// <param name="Means">What it does or what to do; may be empty.</param>
public sealed record CardLine(string Say, string Means);
