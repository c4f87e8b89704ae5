namespace HandsFree.Exchange.Tests.Fhir.Server;

/// <summary>How a server misbehaves.</summary>
internal enum Behaviour
{
    /// <summary>It keeps R4's rules.</summary>
    Good,

    /// <summary>It says yes and keeps nothing.</summary>
    KeepsNothing,

    /// <summary>It says yes and keeps another value.</summary>
    KeepsAnother,

    /// <summary>It does the transaction and sends half of the answer.</summary>
    HalfAnAnswer,

    /// <summary>It does the transaction and hangs up.</summary>
    HangsUp,

    /// <summary>It is busy: 503, to be asked again in 7 seconds.</summary>
    Busy,

    /// <summary>Its disk is full: 507.</summary>
    FullDisk,

    /// <summary>It refuses everything: 422 with reasons.</summary>
    Refuses,

    /// <summary>It answers with a page.</summary>
    NoFhir,

    /// <summary>It sends elsewhere: 302.</summary>
    Redirects,
}
