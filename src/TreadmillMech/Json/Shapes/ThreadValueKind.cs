using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>A thread as a value of its own: its designation, or the measured lead as a length.</summary>
internal sealed class ThreadValueKind : ScalarKind<ScrewThread>
{
    internal static readonly ThreadValueKind Any = new();

    internal override string Expected => $"a thread, {ScrewThread.AcceptedForms}, or its measured lead, \"1.25 mm\"";

    internal override void Write(Utf8JsonWriter json, ScrewThread value)
    {
        if (value.Family == ThreadFamily.Measured)
        {
            JsonKinds.Length.Write(json, value.Lead);
        }
        else
        {
            json.WriteStringValue(value.Designation);
        }
    }

    internal override void Describe(SchemaWriter schema) => schema.Type("string");

    protected override Refusal? Take(LocatedNode node, out ScrewThread value)
    {
        FileProblems problems = new();
        if (JsonKinds.Length.Read(node, problems, out Length lead))
        {
            try
            {
                value = ScrewThread.FromMeasuredLead(lead);
                return null;
            }
            catch (OutOfRangeException outside)
            {
                value = null!;
                return new(node.Shown, ObjectReader.Range(outside.Value, outside.Permitted, outside.Unit));
            }
        }

        bool known = ScrewThread.TryParse(node.Kind == NodeKind.Text ? node.Text : null, out ScrewThread? thread);
        value = thread!;
        return known ? null : new(node.Shown, Expected);
    }
}
