using System.Security.Cryptography;
using System.Text.Json;

namespace HandsFree.Store.Devices;

/// <summary>Counts wrong PINs and makes who guesses wait: three are free, then 30 seconds, doubled each time, at most an hour; after twelve
/// the person needs a new PIN from a supervisor. All guesses together wait too, so that trying everybody in turn helps nobody. One process
/// at a time looks, tries and counts, so that many at once are counted as many. The count lies on the disk, sealed with the device's
/// secret; the place remembers how often it was written, and where it is missing or an older copy everybody waits an hour. A clock that is
/// set back begins the wait anew.</summary>
/// <param name="device">Whose count.</param>
/// <param name="place">Remembers how often it was written; null where there is no place yet.</param>
/// <param name="time">For the waits.</param>
internal sealed class Lockout(DeviceState device, Place? place, TimeProvider time)
{
    /// <summary>After so many wrong tries in a row a person's PIN is closed.</summary>
    public const int MostTries = 12;

    private const int FreeTries = 3;
    private const int FreeTriesOfAll = 20;
    private const int MostFailed = 1000;
    private const string All = "all";
    private const int NonceSize = 12;
    private const int TagSize = 16;
    private static readonly TimeSpan First = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan Longest = TimeSpan.FromHours(1);

    /// <summary>Begins the count of a new journal.</summary>
    public void Begin() => Save(Tries.None with { Written = 1 });

    /// <summary>Tries, where no wait stands against it.</summary>
    /// <param name="slot">The slot's name.</param>
    /// <param name="who">Whose it is, where there is such a person.</param>
    /// <param name="what">What is tried, for the record.</param>
    /// <param name="closes">Whether it closes after twelve; a key on paper can't be guessed, and does not.</param>
    /// <param name="notes">Whether a wrong try is kept to be written into the journal; false where who asks writes it.</param>
    /// <param name="isRight">Looks.</param>
    public TryResult Try(byte[] slot, string? who, string what, bool closes, bool notes, Func<bool> isRight)
    {
        using FileStream guard = FileGuard.Take($"{device.TriesFile}.lock", time);
        Tries tries = Load();
        string name = Convert.ToHexStringLower(slot);
        WrongTries before = tries.By.GetValueOrDefault(name) ?? new WrongTries(0, DateTimeOffset.MinValue);
        if (closes && before.Wrong >= MostTries)
        {
            return new TryResult(false, false, TimeSpan.Zero, IsClosed: true);
        }

        TimeSpan left = Left(tries, name);
        if (left > TimeSpan.Zero)
        {
            return new TryResult(false, false, left, false);
        }

        if (isRight())
        {
            if (tries.By.Remove(name) | tries.By.Remove(All))
            {
                Save(tries);
            }

            return new TryResult(true, true, TimeSpan.Zero, false);
        }

        DateTimeOffset now = time.GetUtcNow();
        tries.By[name] = new WrongTries(before.Wrong + 1, now);
        tries.By[All] = new WrongTries((tries.By.GetValueOrDefault(All)?.Wrong ?? 0) + 1, now);
        if (notes)
        {
            Note(tries, new FailedOpening(now, who, what));
        }

        Save(tries);
        TimeSpan wait = Wait(before.Wrong + 1, FreeTries) is { Ticks: > 0 } own ? own : Wait(tries.By[All].Wrong, FreeTriesOfAll);
        return new TryResult(false, true, wait, closes && before.Wrong + 1 >= MostTries);
    }

    /// <summary>Notes what can't be written in the journal yet.</summary>
    public void Note(FailedOpening failed)
    {
        using FileStream guard = FileGuard.Take($"{device.TriesFile}.lock", time);
        Tries tries = Load();
        Note(tries, failed);
        Save(tries);
    }

    /// <summary>A new PIN: its count begins anew.</summary>
    public void Forget(byte[] slot)
    {
        using FileStream guard = FileGuard.Take($"{device.TriesFile}.lock", time);
        Tries tries = Load();
        if (tries.By.Remove(Convert.ToHexStringLower(slot)))
        {
            Save(tries);
        }
    }

    /// <summary>Gives out what no event tells yet, to be written; it is forgotten once that was done.</summary>
    /// <param name="write">Writes; what it throws leaves them here.</param>
    public void TakeFailed(Action<IReadOnlyList<FailedOpening>> write)
    {
        using FileStream guard = FileGuard.Take($"{device.TriesFile}.lock", time);
        Tries tries = Load();
        if (tries.Failed.Count > 0)
        {
            write([.. tries.Failed]);
            tries.Failed.Clear();
            Save(tries);
        }
    }

    private static void Note(Tries tries, FailedOpening failed)
    {
        if (tries.Failed.Count < MostFailed)
        {
            tries.Failed.Add(failed);
        }
    }

    private static TimeSpan Wait(int wrong, int free)
    {
        if (wrong <= free)
        {
            return wrong < free ? TimeSpan.Zero : First;
        }

        double seconds = First.TotalSeconds * Math.Pow(2, Math.Min(wrong - free, 20));
        return seconds < Longest.TotalSeconds ? TimeSpan.FromSeconds(seconds) : Longest;
    }

    private TimeSpan Left(Tries tries, string name)
    {
        DateTimeOffset now = time.GetUtcNow();
        foreach (string each in new[] { name, All })
        {
            if (tries.By.TryGetValue(each, out WrongTries? found) && now < found.Last)
            {
                tries.By[each] = found with { Last = now };
                Save(tries);
            }
        }

        if (tries.LostAt is { } ahead && now < ahead)
        {
            Save(tries with { LostAt = now });
        }

        return new[]
        {
            tries.By.TryGetValue(name, out WrongTries? own) ? Wait(own.Wrong, FreeTries) - (now - own.Last) : TimeSpan.Zero,
            tries.By.TryGetValue(All, out WrongTries? all) ? Wait(all.Wrong, FreeTriesOfAll) - (now - all.Last) : TimeSpan.Zero,
            tries.LostAt is { } lost ? Longest - (now > lost ? now - lost : TimeSpan.Zero) : TimeSpan.Zero,
        }.Max();
    }

    private Tries Load()
    {
        Tries? read = File.Exists(device.TriesFile) ? Opened(PrivateFile.Read(device.TriesFile)) : null;
        long known = place?.Last?.Tries ?? 0;
        if (read is not null && read.Written >= known)
        {
            return read;
        }

        DateTimeOffset now = time.GetUtcNow();
        Tries lost = (read ?? Tries.None) with { Written = known, LostAt = now };
        Note(lost, new FailedOpening(now, null, "the count of wrong PINs was gone or put back"));
        Save(lost);
        return lost;
    }

    private void Save(Tries tries)
    {
        Tries next = tries with { Written = tries.Written + 1 };
        byte[] content = JsonSerializer.SerializeToUtf8Bytes(next);
        byte[] file = new byte[NonceSize + content.Length + TagSize];
        RandomNumberGenerator.Fill(file.AsSpan(0, NonceSize));
        using AesGcm aes = Cipher();
        aes.Encrypt(file.AsSpan(0, NonceSize), content, file.AsSpan(NonceSize, content.Length), file.AsSpan(NonceSize + content.Length));
        PrivateFile.Write(device.TriesFile, file);
        place?.Counted(next.Written);
    }

    private Tries? Opened(byte[] file)
    {
        if (file.Length < NonceSize + TagSize)
        {
            return null;
        }

        byte[] content = new byte[file.Length - NonceSize - TagSize];
        using AesGcm aes = Cipher();
        try
        {
            aes.Decrypt(file.AsSpan(0, NonceSize), file.AsSpan(NonceSize, content.Length), file.AsSpan(NonceSize + content.Length), content);
            return JsonSerializer.Deserialize<Tries>(content);
        }
        catch (Exception wrong) when (wrong is AuthenticationTagMismatchException or JsonException)
        {
            return null;
        }
    }

    private AesGcm Cipher() => new(device.KeyFor("handsfree tries 3"), TagSize);
}
