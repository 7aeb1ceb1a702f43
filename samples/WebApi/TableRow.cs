using TreadmillMech.Model;

namespace TreadmillMech.Samples.WebApi;

/// <summary>A row of the tables of inputs and outputs.</summary>
/// <param name="Name">The name it is addressed by.</param>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Unit">Its SI unit; "1" for a plain number.</param>
/// <param name="Description">What it is.</param>
/// <param name="From">Lower end of what is permitted; null for outputs.</param>
/// <param name="To">Upper end.</param>
internal sealed record TableRow(
    string Name,
    string Symbol,
    string Unit,
    string Description,
    double? From = null,
    double? To = null
)
{
    internal static TableRow Of(Input row) =>
        new(row.Name, row.Symbol, row.Unit, row.Description, row.Range.From, row.Range.To);

    internal static TableRow Of(Output row) => new(row.Name, row.Symbol, row.Unit, row.Description);
}
