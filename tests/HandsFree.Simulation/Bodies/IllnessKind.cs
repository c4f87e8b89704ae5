namespace HandsFree.Simulation.Bodies;

/// <summary>What a resident can fall ill with.</summary>
internal enum IllnessKind
{
    /// <summary>Fever, fast breathing, falling saturation.</summary>
    ChestInfection,

    /// <summary>Some fever, little else.</summary>
    UrinaryInfection,

    /// <summary>A unit's winter outbreak: fever, aching, some cough.</summary>
    Influenza,

    /// <summary>Water: weight rises, breathing gets faster.</summary>
    FluidOverload,

    /// <summary>Too little drunk: pressure falls, pulse rises.</summary>
    Dehydration,
}
