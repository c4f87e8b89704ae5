using System.Text.Json.Serialization;

namespace HandsFree.Core.Journal;

/// <summary>Something that happened and is kept for ever. Events name residents by their id, never by name.</summary>
/// <param name="Id">Unique in the home: the session's id, a dash and a number.</param>
/// <param name="Person">The id of the person whose doing it is.</param>
/// <param name="At">When it was entered.</param>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "type")]
[JsonDerivedType(typeof(RoundStarted), "round started")]
[JsonDerivedType(typeof(RoundEnded), "round ended")]
[JsonDerivedType(typeof(RoundResumed), "round resumed")]
[JsonDerivedType(typeof(DialogueTold), "dialogue told")]
[JsonDerivedType(typeof(ResidentIdentified), "resident identified")]
[JsonDerivedType(typeof(IdentificationFailed), "identification failed")]
[JsonDerivedType(typeof(ReadingRecorded), "reading recorded")]
[JsonDerivedType(typeof(NotTakenRecorded), "not taken")]
[JsonDerivedType(typeof(AttemptDiscarded), "attempt discarded")]
[JsonDerivedType(typeof(LeftOpen), "left open")]
[JsonDerivedType(typeof(RecheckAsked), "recheck asked")]
[JsonDerivedType(typeof(ReportOpened), "report opened")]
[JsonDerivedType(typeof(ReportAcknowledged), "report acknowledged")]
[JsonDerivedType(typeof(ReportTold), "report told")]
[JsonDerivedType(typeof(ReportClosed), "report closed")]
[JsonDerivedType(typeof(PlanMade), "plan made")]
[JsonDerivedType(typeof(EnteredInError), "entered in error")]
[JsonDerivedType(typeof(ReadingAmended), "reading amended")]
[JsonDerivedType(typeof(ReportNoted), "report noted")]
[JsonDerivedType(typeof(PersonAdded), "person added")]
[JsonDerivedType(typeof(PersonRemoved), "person removed")]
[JsonDerivedType(typeof(PinChanged), "pin changed")]
[JsonDerivedType(typeof(RecoveryKeyMade), "recovery key made")]
[JsonDerivedType(typeof(RecordViewed), "record viewed")]
[JsonDerivedType(typeof(JournalRestored), "journal restored")]
[JsonDerivedType(typeof(JournalAccepted), "journal accepted")]
[JsonDerivedType(typeof(OpeningFailed), "opening failed")]
[JsonDerivedType(typeof(NotBelieved), "not believed")]
[JsonDerivedType(typeof(RulesKept), "rules kept")]
[JsonDerivedType(typeof(RosterKept), "roster kept")]
[JsonDerivedType(typeof(SessionLocked), "session locked")]
[JsonDerivedType(typeof(SessionUnlocked), "session unlocked")]
[JsonDerivedType(typeof(UnlockFailed), "unlock failed")]
[JsonDerivedType(typeof(SpokenDigitsSet), "spoken digits set")]
[JsonDerivedType(typeof(AudioKept), "audio kept")]
[JsonDerivedType(typeof(AudioDeleted), "audio deleted")]
[JsonDerivedType(typeof(RecordTakenOut), "record taken out")]
[JsonDerivedType(typeof(RecordDelivered), "record delivered")]
public abstract record JournalEvent(string Id, string Person, DateTimeOffset At);
