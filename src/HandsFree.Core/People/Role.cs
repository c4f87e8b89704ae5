namespace HandsFree.Core.People;

/// <summary>What a person may do. Each may also do what the one before may.</summary>
public enum Role
{
    /// <summary>Records readings and amends her own.</summary>
    Aide,

    /// <summary>Acknowledges reports and amends everybody's readings.</summary>
    Nurse,

    /// <summary>Sets up and removes people, makes and restores backups.</summary>
    Supervisor,
}
