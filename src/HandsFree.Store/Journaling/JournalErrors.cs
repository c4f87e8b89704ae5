using System.Globalization;
using HandsFree.Store.Keys;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace HandsFree.Store.Journaling;

/// <summary>The sentences for everything that can be wrong with a journal, and the way from SQLite's codes to them.</summary>
internal static class JournalErrors
{
    public static JournalError Empty(string path) => new(
        JournalProblem.Empty,
        $"journal {path}: the file has zero bytes, so it is no journal; restore it from a backup, or move it away to begin a new one");

    public static JournalError NotSqlite(string path) => new(
        JournalProblem.NotSqlite,
        $"journal {path}: not a SQLite file; name the right file, or restore it from a backup");

    public static JournalError OtherApplication(string path, int applicationId) => new(
        JournalProblem.OtherApplication,
        $"journal {path}: a SQLite file of another application (id {applicationId}); name the right file");

    public static JournalError NewerVersion(string path, int version) => new(
        JournalProblem.NewerVersion,
        $"journal {path}: written by a newer version (format {version}, this program knows {JournalSchema.Version}); use the newer program");

    public static JournalError OlderVersion(string path, int version) => new(
        JournalProblem.OlderVersion,
        $"journal {path}: of format {version}, which this program does not open; move the file away and begin a new one (format {JournalSchema.Version})");

    public static JournalError FileReadOnly(string path) => new(
        JournalProblem.ReadOnly,
        $"journal {path}: the file is read-only; allow writing to it, or name another folder");

    public static JournalError IsFolder(string path) => new(
        JournalProblem.NoAccess,
        $"journal {path}: a folder, not a file; name a file in it");

    public static JournalError Exists(string path) => new(
        JournalProblem.NoAccess,
        $"journal {path}: there is a file already, and nothing is overwritten; move it away, or name another");

    public static JournalError NoFolder(string path) => new(
        JournalProblem.NoAccess,
        $"journal {path}: the folder {Path.GetDirectoryName(path)} does not exist; make it, or name another");

    public static JournalError NotCreated(string path, string reason) => new(
        JournalProblem.NoAccess,
        $"journal {path}: can't be made in its folder ({reason}); allow writing there, or name another folder");

    public static JournalError NotReadable(string path) => new(
        JournalProblem.Damaged,
        $"journal {path}: its rows are not as they were laid down; keep the file as it is and restore a backup beside it");

    public static JournalError NotOpened(string path, string reason) => new(
        JournalProblem.NoAccess,
        $"journal {path}: can't be opened ({reason}); check the file and its folder");

    public static JournalError NoWal(string path) => new(
        JournalProblem.NoAccess,
        $"journal {path}: this file system can't hold a write-ahead log; put the journal on a local disk");

    public static JournalError Gap(string path, long expected, long found) => new(
        JournalProblem.Damaged,
        $"journal {path}: event {expected} is missing, {found} follows; restore the file from a backup");

    public static JournalError Altered(string path, long sequence) => new(
        JournalProblem.Damaged,
        $"journal {path}: event {sequence} is not as it was written; keep the file as it is and restore a backup beside it");

    public static JournalError OtherDevice(string path) => new(
        JournalProblem.OtherDevice,
        $"journal {path}: written on another device; bring a backup of it in with \"handsfree journal restore\" and its recovery key");

    public static JournalError NeedsPin(string path) => new(
        JournalProblem.NeedsPin,
        $"journal {path}: locked; give a person and PIN at the terminal, with --unlock-fd, or in a file that HANDSFREE_PIN_FILE names");

    public static JournalError WrongPin(string path, Credential credential, TimeSpan wait) => new(
        JournalProblem.WrongPin,
        $"journal {path}: " + credential switch
        {
            Credential.Recovery => "this is not its recovery key; copy it from the paper again",
            Credential.Emergency => "this is not its emergency key; copy it from the paper again",
            _ => "no such person with that PIN or passphrase; try again",
        } + (wait > TimeSpan.Zero ? $" in {Words(wait)}" : ""));

    public static JournalError Closed(string path) => new(
        JournalProblem.LockedOut,
        $"journal {path}: closed for this person after {Devices.Lockout.MostTries} wrong PINs; a supervisor gives a new one with \"handsfree people pin\"");

    public static JournalError KeysAltered(string path, string what) => new(
        JournalProblem.KeysAltered,
        $"journal {path}: {what}; keep the file as it is, and bring a backup in with \"handsfree journal restore\"");

    public static JournalError Removed(string path) => new(
        JournalProblem.Removed,
        $"journal {path}: whoever opened it may open it no more, or has a new PIN; open it again");

    public static JournalError Gone(string path) => new(
        JournalProblem.Gone,
        $"journal {path}: this device had a journal here, and the file is gone; put it back (is its disk there?), or bring a backup in with \"handsfree journal restore\"");

    public static JournalError UnknownPlace(string path) => new(
        JournalProblem.UnknownPlace,
        $"journal {path}: this device has not seen the journal here, or what it remembered of it is gone; put it back where it was, "
        + "or let a supervisor look at it and take it as it is with \"handsfree journal accept\"");

    public static JournalError OtherJournal(string path) => new(
        JournalProblem.UnknownPlace,
        $"journal {path}: another journal than this device has seen here; put the right one back, "
        + "or let a supervisor look at it and take it as it is with \"handsfree journal accept\"");

    public static JournalError NotAccepted(string path) => new(
        JournalProblem.NotAllowed,
        $"journal {path}: only a supervisor or the recovery key takes a journal as it is; ask one of them");

    public static JournalError NotRestored(string path) => new(
        JournalProblem.NotAllowed,
        $"journal {path}: only a supervisor or the recovery key restores a backup; ask one of them");

    public static JournalError LockedOut(string path, TimeSpan left) => new(
        JournalProblem.LockedOut,
        $"journal {path}: locked after too many wrong PINs; wait {Words(left)}, or ask the supervisor for a new PIN");

    public static JournalError DeviceSecretWrong(string path) => new(
        JournalProblem.OtherDevice,
        $"journal {path}: this device's secret does not open it; bring a backup of it in with \"handsfree journal restore\" and its recovery key");

    public static JournalError DeviceBroken(string path, string reason) => new(
        JournalProblem.OtherDevice,
        $"journal {path}: what this device keeps for it can't be read ({reason}); restore that folder, or bring a backup in with the recovery key");

    public static JournalError Older(string path, long has, long had) => new(
        JournalProblem.Older,
        $"journal {path}: ends with event {has}, but this device has seen event {had}: the end is missing or the file is an old copy; "
        + "put the newest file back; where it is lost, a supervisor takes this one as it is with \"handsfree journal accept\", which loses nothing that is in it");

    /// <summary>The sentence for a failure that SQLite reports.</summary>
    public static JournalError From(string path, SqliteException failure) => failure.SqliteErrorCode switch
    {
        raw.SQLITE_NOTADB => NotSqlite(path),
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED => new(
            JournalProblem.Locked,
            $"journal {path}: locked by another program; close that program, then try again"),
        raw.SQLITE_FULL => new(
            JournalProblem.DiskFull,
            $"journal {path}: the disk is full and nothing was saved; free some space, then say it again"),
        raw.SQLITE_READONLY => FileReadOnly(path),
        raw.SQLITE_CANTOPEN or raw.SQLITE_PERM => new(
            JournalProblem.NoAccess,
            $"journal {path}: the file can't be opened for writing; allow writing to it and to its folder"),
        raw.SQLITE_CORRUPT => new(
            JournalProblem.Damaged,
            $"journal {path}: the file is damaged; restore it from a backup"),
        raw.SQLITE_IOERR => new(
            JournalProblem.DiskFailed,
            $"journal {path}: the disk failed (SQLite code {failure.SqliteExtendedErrorCode}); check the disk, then try again"),
        _ => new(
            JournalProblem.Damaged,
            $"journal {path}: not a journal of this program ({failure.Message.ReplaceLineEndings(" ")}); restore it from a backup"),
    };

    private static string Words(TimeSpan wait) => wait > TimeSpan.FromMinutes(2)
        ? $"{Math.Ceiling(wait.TotalMinutes).ToString(CultureInfo.InvariantCulture)} minutes"
        : $"{Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture)} seconds";
}
