namespace HandsFree.Store.Journaling;

/// <summary>Why a journal can't be opened, written or read.</summary>
public enum JournalProblem
{
    /// <summary>The file has no bytes: something else made or emptied it.</summary>
    Empty,

    /// <summary>The file is of another kind.</summary>
    NotSqlite,

    /// <summary>A database, but not one of this program.</summary>
    OtherApplication,

    /// <summary>Written by a newer version of this program.</summary>
    NewerVersion,

    /// <summary>The file or its folder may not be written.</summary>
    ReadOnly,

    /// <summary>The folder is missing, or the file can't be made or opened in it.</summary>
    NoAccess,

    /// <summary>Another program kept the file locked for longer than the waiting time.</summary>
    Locked,

    /// <summary>No space is left.</summary>
    DiskFull,

    /// <summary>The file's content is broken.</summary>
    Damaged,

    /// <summary>The disk or the file system failed.</summary>
    DiskFailed,

    /// <summary>Written on another device; this one has no secret for it.</summary>
    OtherDevice,

    /// <summary>People are set up, and no PIN was given.</summary>
    NeedsPin,

    /// <summary>No such person, or not that PIN; or the recovery key is not this journal's.</summary>
    WrongPin,

    /// <summary>Too many wrong PINs; the wait is not over.</summary>
    LockedOut,

    /// <summary>Events are missing at the end that were there when this device last had the journal open.</summary>
    Older,

    /// <summary>Of a format that this program opens no more.</summary>
    OlderVersion,

    /// <summary>The list of who may open is not as it was signed, or not as this device has seen it.</summary>
    KeysAltered,

    /// <summary>Who opened it may open it no more.</summary>
    Removed,

    /// <summary>This device had a journal there, and the file is gone.</summary>
    Gone,

    /// <summary>A journal that this device has not seen in this place.</summary>
    UnknownPlace,

    /// <summary>Her role does not allow it.</summary>
    NotAllowed,
}
