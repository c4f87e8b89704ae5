namespace HandsFree.Audio.Devices;

/// <summary>A device that hands its sound over in packets and signals when it may have one.</summary>
internal interface IPacketSource
{
    /// <summary>Waits for the device's signal. A signal is no sound yet: a device may signal for ever and bring nothing.</summary>
    /// <param name="atMost">How long.</param>
    void Wait(TimeSpan atMost);

    /// <summary>Takes the next packet whole.</summary>
    /// <param name="samples">Filled from its beginning; what does not fit is lost.</param>
    /// <returns>Samples that the device had, 0 where it had none.</returns>
    int Take(Span<float> samples);
}
