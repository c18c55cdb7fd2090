namespace Headroom.Engineering.Racking;

/// <summary>Makes drafts of entries about racks.</summary>
internal static class RackDraft
{
    /// <summary>A draft.</summary>
    public static EntryDraft Of(string subject, string quantity, (string What, string Unit) told, string kind) =>
        new(RackingLedger.Discipline, subject, quantity, told.What, told.Unit, kind);
}
