namespace HandsFree.Simulation;

/// <summary>Invented names; any likeness to a person is chance.</summary>
internal static class Names
{
    /// <summary>First names.</summary>
    public static readonly string[] First =
    [
        "Ada", "Agnes", "Alma", "Anton", "Beatriz", "Bernard", "Bruno", "Clara", "Cyril", "Dagny", "Delia", "Edgar", "Elsie", "Emil", "Esther",
        "Fania", "Felix", "Frida", "Gideon", "Greta", "Hattie", "Hector", "Hilda", "Ida", "Irma", "Isidor", "Josefa", "Jules", "Kasimir", "Lena",
        "Leopold", "Lucia", "Magnus", "Mavis", "Milo", "Nadia", "Nils", "Odile", "Olga", "Oscar", "Paola", "Percy", "Petra", "Quentin", "Ramona",
        "Rosa", "Rufus", "Selma", "Silas", "Tilda", "Ulla", "Ursula", "Valerie", "Viktor", "Walter", "Wilma", "Xenia", "Yvette", "Zelda", "Zoltan",
    ];

    /// <summary>Family names.</summary>
    public static readonly string[] Family =
    [
        "Abelard", "Ashgrove", "Bellweather", "Birchley", "Castellane", "Coldwater", "Dunmarrow", "Elderfield", "Fairbrook", "Farthing", "Greenhalt",
        "Hartsong", "Hollowell", "Ivoryton", "Juniperley", "Kestrelman", "Larkspurn", "Lindqvale", "Marshgate", "Merriwater", "Nightfield", "Oakhallow",
        "Osterling", "Pennyworthy", "Quillon", "Ravensby", "Rosenfold", "Saltmarsh", "Sparrowdale", "Thistlewick", "Underbough", "Vandermoor",
        "Wexcombe", "Wintergale", "Yarrowby", "Zimmerdale",
    ];
}
