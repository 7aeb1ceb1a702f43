using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Parts;

namespace TreadmillMech.Json.Shapes;

/// <summary>A thread by its designation.</summary>
/// <param name="also">What is accepted besides, in words; empty for nothing.</param>
internal sealed class ThreadKind(string also) : ScalarKind<ScrewThread>
{
    internal override string Expected => $"a thread, {ScrewThread.AcceptedForms}{also}";

    internal override void Write(Utf8JsonWriter json, ScrewThread value) => json.WriteStringValue(value.Designation);

    internal override void Describe(SchemaWriter schema) => schema.Type("string");

    protected override Refusal? Take(LocatedNode node, out ScrewThread value)
    {
        bool known = ScrewThread.TryParse(node.Kind == NodeKind.Text ? node.Text : null, out ScrewThread? thread);
        value = thread!;
        return known ? null : new(node.Shown, Expected);
    }
}
