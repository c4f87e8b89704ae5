namespace HandsFree.Simulation.Bodies;

/// <summary>What the time of day does. Lowest temperature about six in the morning, highest about five in the afternoon (Mackowiak et al.,
/// JAMA 1992;268:1578-1580, from memory); pressure and pulse fall by about a tenth in the night ("dipping", from memory). In old age the
/// swing is smaller; the numbers are invented.</summary>
internal static class DayPattern
{
    private const double Warmest = 17;
    private const double MostActive = 15;

    /// <summary>Degrees Fahrenheit to add.</summary>
    public static double Temperature(double hour) => 0.4 * Wave(hour, Warmest);

    /// <summary>Share of the pulse to add.</summary>
    public static double Pulse(double hour) => 0.04 * Wave(hour, MostActive);

    /// <summary>Share of the pressures to add.</summary>
    public static double Pressure(double hour) => 0.045 * Wave(hour, MostActive);

    private static double Wave(double hour, double top) => Math.Cos(2 * Math.PI * (hour - top) / 24);
}
