using HandsFree.Core.Observations;

namespace HandsFree.Core.Meanings;

/// <summary>What is said about the way a reading was taken.</summary>
internal static class Qualifiers
{
    private static readonly string[] Litres =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
        "fourteen", "fifteen",
    ];

    private static readonly Dictionary<string, Circumstances> Known = new()
    {
        ["by mouth"] = new() { Site = TemperatureSite.Mouth },
        ["mouth"] = new() { Site = TemperatureSite.Mouth },
        ["oral"] = new() { Site = TemperatureSite.Mouth },
        ["ear"] = new() { Site = TemperatureSite.Ear },
        ["forehead"] = new() { Site = TemperatureSite.Forehead },
        ["armpit"] = new() { Site = TemperatureSite.Armpit },
        ["rectal"] = new() { Site = TemperatureSite.Rectum },
        ["left arm"] = new() { Arm = Arm.Left },
        ["right arm"] = new() { Arm = Arm.Right },
        ["sitting"] = new() { Position = BodyPosition.Sitting },
        ["lying"] = new() { Position = BodyPosition.Lying },
        ["standing"] = new() { Position = BodyPosition.Standing },
        ["on oxygen"] = new() { Oxygen = OxygenSupply.FlowUnsaid },
        ["on room air"] = new() { Oxygen = OxygenSupply.RoomAir },
        ["room air"] = new() { Oxygen = OxygenSupply.RoomAir },
        ["nasal cannula"] = new() { Oxygen = OxygenSupply.FlowUnsaid, Delivery = OxygenDelivery.NasalCannula },
        ["mask"] = new() { Oxygen = OxygenSupply.FlowUnsaid, Delivery = OxygenDelivery.Mask },
        ["small cuff"] = new() { Cuff = CuffSize.Small },
        ["large cuff"] = new() { Cuff = CuffSize.Large },
        ["thigh cuff"] = new() { Cuff = CuffSize.Thigh },
        ["own device"] = new() { Device = DeviceNote.Own },
        ["other device"] = new() { Device = DeviceNote.Other },
        ["before medicine"] = new() { Medicine = MedicineTiming.Before },
        ["after medicine"] = new() { Medicine = MedicineTiming.After },
        ["observed"] = new() { Observed = true },
        ["machine"] = new() { Machine = true },
        ["irregular"] = new() { Uneven = true },
        ["uneven"] = new() { Uneven = true },
    };

    /// <summary>The circumstance that a qualifier's text stands for, with litres where they were said; null where unknown.</summary>
    public static Circumstances? From(string text, decimal? litres)
    {
        if (litres is not null)
        {
            return litres is > 0 and <= 60 ? new Circumstances { Oxygen = new OxygenSupply(litres) } : null;
        }

        return Known.TryGetValue(text, out Circumstances? known) ? known : FromLitres(text);
    }

    private static Circumstances? FromLitres(string text)
    {
        string[] words = text.Split(' ');
        bool fits = words.Length == 3 && words[0] == "on" && words[2] is "liter" or "liters" or "litre" or "litres";
        int flow = fits ? Array.IndexOf(Litres, words[1]) : -1;
        return flow > 0 ? new Circumstances { Oxygen = new OxygenSupply(flow) } : null;
    }
}
