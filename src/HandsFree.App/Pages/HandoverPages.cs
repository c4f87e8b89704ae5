using HandsFree.App.Commands;
using HandsFree.App.Homes;
using HandsFree.App.ShiftChange;
using HandsFree.App.Unlocking;
using HandsFree.Pages.Handovers;

namespace HandsFree.App.Pages;

/// <summary>Writes the handover page.</summary>
internal static class HandoverPages
{
    /// <summary>Writes it.</summary>
    /// <param name="host">Says what was done or what is wrong.</param>
    /// <param name="home">The home; has residents.</param>
    /// <param name="unlocker">Gives person and PIN.</param>
    /// <param name="target">Where the page goes.</param>
    /// <param name="unit">The only unit, as it was typed; null for all.</param>
    /// <param name="began">The beginning that was typed; null for that of the present shift.</param>
    public static int Write(CommandHost host, Home home, Unlocker unlocker, PageTarget target, string? unit, string? began)
    {
        if (unit is not null && !home.Roster.Units.Contains(unit, StringComparer.OrdinalIgnoreCase))
        {
            string known = home.Roster.Units.Count == 0 ? "its residents are of no unit; leave --unit out" : $"it has {string.Join(", ", home.Roster.Units)}";
            return host.Refuse($"--unit is \"{unit}\", and the home has no such unit; {known}");
        }

        (PageRecord? record, string? error) = JournalContent.Look(home.Folder, unlocker, "handover page", PageRecord.Present, PageRecord.None);
        if (record is null)
        {
            return host.Refuse(error!);
        }

        PageDesk desk = new(host, home, target);
        if (ShiftBeginning.Of(began, home.Settings, record.Events, desk.Now) is not { } since)
        {
            return host.Refuse(ShiftBeginning.Wrong(began!));
        }

        string? remark = record.Entries == 0 ? "nothing was ever recorded on this device" : since.Remark;
        HandoverSheet sheet = HandoverSheet.Of(desk.Facts(record, since.At, remark), record.Events, home.Roster, home.Rules, unit);
        int residents = sheet.Units.Sum(u => u.Everyone.Count);
        string units = sheet.Units.Count > 1 ? $" in {sheet.Units.Count} units" : "";
        return desk.Write(
            $"handover of {residents} {(residents == 1 ? "resident" : "residents")}{units}", () => HandoverHtml.Write(sheet, desk.Paper), () => HandoverPdf.Write(sheet, desk.Paper));
    }
}
