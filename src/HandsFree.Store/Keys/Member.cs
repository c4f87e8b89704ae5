using HandsFree.Core.People;

namespace HandsFree.Store.Keys;

/// <summary>One holder in a keyring. Her id is not here in the clear.</summary>
/// <param name="Number">1 and more; used once in the life of a journal.</param>
/// <param name="Kind">A person, or a key on paper.</param>
/// <param name="Role">What she may do.</param>
/// <param name="Signs">The public key of her signatures.</param>
/// <param name="Agrees">The public key to which the data key is sealed.</param>
/// <param name="Slot">The hash of her slot, the only one that is accepted for her.</param>
/// <param name="Box">The data key, sealed to her.</param>
internal sealed record Member(int Number, KeySlotKind Kind, Role Role, byte[] Signs, byte[] Agrees, byte[] Slot, byte[] Box);
