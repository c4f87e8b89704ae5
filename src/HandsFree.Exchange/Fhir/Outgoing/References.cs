using HandsFree.Core.Residents;
using HandsFree.Exchange.Fhir.Codes;
using Hl7.Fhir.Model;

namespace HandsFree.Exchange.Fhir.Outgoing;

/// <summary>How resources name residents, people and places. People and places are named by identifier alone: whom the receiver knows by it, it
/// finds; nobody is made up there.</summary>
/// <param name="ids">Makes ids.</param>
/// <param name="systems">The systems of the home's identifiers.</param>
/// <param name="newPatients">Whether a bundle brings a Patient along, made where the receiver has none with the identifier; else the receiver
/// must have the Patient, and refuses the bundle where it has not.</param>
public sealed class References(FhirIds ids, IdentifierSystems systems, bool newPatients)
{
    /// <summary>Whether bundles bring Patients along.</summary>
    public bool BringPatients => newPatients;

    /// <summary>The resident.</summary>
    public ResourceReference Patient(string resident) => new(newPatients ? PatientUrl(resident) : $"Patient?{Search(systems.Residents, resident)}")
    {
        Type = "Patient",
        Identifier = new Identifier(systems.Residents, resident),
    };

    /// <summary>An aide or a nurse.</summary>
    public ResourceReference Person(string person) => new() { Type = "Practitioner", Identifier = new Identifier(systems.People, person) };

    /// <summary>A room or bed.</summary>
    public ResourceReference Place(string place) => new() { Type = "Location", Identifier = new Identifier(systems.Places, place), Display = place };

    /// <summary>The entry that makes a Patient where the receiver has none with the identifier; what it has, stays as it is.</summary>
    /// <param name="id">The resident's.</param>
    /// <param name="resident">As the roster knows her; null where it does no more.</param>
    public Bundle.EntryComponent PatientEntry(string id, Resident? resident) => new()
    {
        FullUrl = PatientUrl(id),
        Resource = new Patient
        {
            Identifier = [new Identifier(systems.Residents, id) { Type = new CodeableConcept(FhirSystems.IdentifierType, "MR", "Medical record number", null) }],
            Active = true,
            Name = resident is null ? [] : [new HumanName { Use = HumanName.NameUse.Official, Text = resident.OfficialName ?? resident.Name }],
            BirthDate = resident?.Born.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture),
        },
        Request = new() { Method = Bundle.HTTPVerb.POST, Url = "Patient", IfNoneExist = Search(systems.Residents, id) },
    };

    /// <summary>A search for one identifier.</summary>
    public static string Search(string system, string value) => $"identifier={Uri.EscapeDataString(system)}%7C{Uri.EscapeDataString(value)}";

    private string PatientUrl(string resident) => ids.Urn($"patient/{resident}");
}
