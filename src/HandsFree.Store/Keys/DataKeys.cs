namespace HandsFree.Store.Keys;

/// <summary>A journal's data keys by their generation: 1 while the device alone opens it, another from the first person on and from each
/// removal on.</summary>
internal sealed class DataKeys : IDisposable
{
    private readonly Dictionary<int, DataKey> keys;

    public DataKeys(Dictionary<int, DataKey> keys) => this.keys = keys;

    /// <summary>The generation in force.</summary>
    public int Generation => keys.Keys.Max();

    /// <summary>The key in force.</summary>
    public DataKey Current => keys[Generation];

    /// <summary>The key of a generation, or null.</summary>
    public DataKey? Of(int generation) => keys.GetValueOrDefault(generation);

    /// <summary>These and the next one.</summary>
    public DataKeys With(DataKey next) => new(new(keys) { [Generation + 1] = next });

    public void Dispose()
    {
        foreach (DataKey key in keys.Values)
        {
            key.Dispose();
        }
    }
}
