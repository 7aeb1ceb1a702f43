using System.Reflection;
using System.Xml.Linq;
using TreadmillMech.Model;

namespace TreadmillMech.Tests.Model;

/// <summary>The tables of inputs and outputs say the same as the fields beside them.</summary>
public sealed class TableTests
{
    // A set of rows is carried as bits of a number: 64 bits for inputs and outputs, 53 where a double carries them.
    private const int BitsOfUnsignedLong = 64;
    private const int BitsOfDouble = 53;

    [Fact]
    public void EveryInputIsAFieldInTheSamePlace() =>
        Assert.Equal(Fields(typeof(MachineNumbers<Real>)), Inputs.All.Select(input => input.Name));

    [Fact]
    public void EveryOutputIsAFieldInTheSamePlace() =>
        Assert.Equal(Fields(typeof(OutputNumbers<Real>)), Outputs.All.Select(output => output.Name));

    [Fact]
    public void EveryRowIsAPropertyOfItsTableByName()
    {
        Assert.All(Inputs.All, row => Assert.Same(row, typeof(Inputs).GetProperty(row.Name)!.GetValue(null)));
        Assert.All(Outputs.All, row => Assert.Same(row, typeof(Outputs).GetProperty(row.Name)!.GetValue(null)));
    }

    [Fact]
    public void ARowsIndexIsItsPlace()
    {
        Assert.Equal(Enumerable.Range(0, Inputs.All.Count), Inputs.All.Select(row => row.Index));
        Assert.Equal(Enumerable.Range(0, Outputs.All.Count), Outputs.All.Select(row => row.Index));
        Assert.All(Inputs.All, row => Assert.Equal(1UL << row.Index, row.Bit));
    }

    [Fact]
    public void TheSpanOfANumberIsTheFieldOfItsRow()
    {
        MachineNumbers<Real> x = default;
        OutputNumbers<Real> y = default;
        x.AsSpan()[Inputs.DeckFriction.Index] = 0.25;
        y.AsSpan()[Outputs.BeltMargin.Index] = 1.5;
        Assert.Equal(0.25, x.DeckFriction.Value);
        Assert.Equal(1.5, y.BeltMargin.Value);
        Assert.Equal(Inputs.All.Count, x.AsSpan().Length);
        Assert.Equal(Outputs.All.Count, y.AsSpan().Length);
    }

    [Fact]
    public void NamesAndSymbolsAreUniqueAndNothingIsEmpty()
    {
        Assert.Equal(Inputs.All.Count, Inputs.All.Select(row => row.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Inputs.All.Count, Inputs.All.Select(row => row.Symbol).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Outputs.All.Count, Outputs.All.Select(row => row.Name).Distinct(StringComparer.Ordinal).Count());
        IEnumerable<string> texts = Inputs
            .All.SelectMany(row => (string[])[row.Name, row.Symbol, row.Unit, row.Description])
            .Concat(Outputs.All.SelectMany(row => (string[])[row.Name, row.Symbol, row.Unit, row.Description]))
            .Concat(Ranges.All.SelectMany(row => (string[])[row.Subject, row.Symbol, row.Unit, row.Source]));
        Assert.All(texts, text => Assert.False(string.IsNullOrWhiteSpace(text)));
    }

    [Fact]
    public void NoTableIsLongerThanItsBits()
    {
        Assert.InRange(Inputs.All.Count, 1, BitsOfUnsignedLong);
        Assert.InRange(Outputs.All.Count, 1, BitsOfUnsignedLong);
        Assert.InRange(Ranges.All.Count, 1, BitsOfDouble);
    }

    [Fact]
    public void TheDocumentationOfAFieldGivesTheTablesDescriptionAndUnit()
    {
        Dictionary<string, string> summaries = XDocument
            .Load(Path.ChangeExtension(typeof(Inputs).Assembly.Location, ".xml"))
            .Descendants("member")
            .ToDictionary(m => m.Attribute("name")!.Value, m => m.Element("summary")?.Value.Trim() ?? "");
        Assert.All(
            Inputs.All,
            row =>
                Assert.Equal(
                    $"{row.Description} [{row.Unit}].",
                    summaries[$"F:TreadmillMech.Model.MachineNumbers`1.{row.Name}"]
                )
        );
        Assert.All(
            Outputs.All,
            row =>
                Assert.Equal(
                    $"{row.Description} [{row.Unit}].",
                    summaries[$"F:TreadmillMech.Model.OutputNumbers`1.{row.Name}"]
                )
        );
    }

    [Fact]
    public void LiftingKeepsEveryInput()
    {
        MachineNumbers<Real> x = default;
        for (int i = 0; i < x.AsSpan().Length; i++)
        {
            x.AsSpan()[i] = i + 0.5;
        }

        MachineNumbers<Dual<Real>> lifted = x.Lift<Dual<Real>>();
        for (int i = 0; i < x.AsSpan().Length; i++)
        {
            Assert.Equal(new Dual<Real>(i + 0.5, 0), lifted.AsSpan()[i]);
        }
    }

    private static IEnumerable<string> Fields(Type numbers) =>
        numbers
            .GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
            .OrderBy(field => field.MetadataToken)
            .Select(field => field.Name);
}
