using HandsFree.Core.Quantities;
using HandsFree.Pages.Handovers;

namespace HandsFree.Pages.Trends;

/// <summary>The columns of the table: those of a sheet, and pain where it was said.</summary>
internal static class TrendColumns
{
    public static IReadOnlyList<VitalSign> Of(TrendSheet sheet) => sheet.Rows.Any(r => r.Cells.ContainsKey(VitalSign.Pain))
        ? [.. UnitSheet.Columns, VitalSign.Pain]
        : UnitSheet.Columns;
}
