using System.Text.Json;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>A thread by its designation, or by the lead measured on the bolt: one of the two.</summary>
internal sealed class ThreadField<T>(ShapeSlot<ScrewThread> slot, Func<T, ScrewThread> get)
    : ShapeField<T>("", ""),
        IEmbedded
    where T : class
{
    private const string Designation = "thread";
    private const string Lead = "lead";
    private const string OneOfTwo = "this or lead must be there";
    private const string Travel = "travel in one turn, measured on the bolt, in place of thread";

    internal override bool Required => true;

    internal override string Expected => JsonKinds.Thread.Expected;

    /// <inheritdoc/>
    public IEnumerable<string> RequiredNames() => [];

    internal override IEnumerable<FormatField> List(string owner) =>
        [
            new(owner, Designation, false, JsonKinds.Thread.Expected, OneOfTwo, []),
            new(owner, Lead, false, JsonKinds.Length.Expected, Travel, []),
        ];

    internal override void Need(ObjectReader fields, ShapeValues values)
    {
        if (Thread(fields) is { } thread)
        {
            values.Set(slot, thread);
        }
    }

    internal override void Write(Utf8JsonWriter json, T part)
    {
        ScrewThread thread = get(part);
        if (thread.Family == ThreadFamily.Measured)
        {
            json.WritePropertyName(Lead);
            JsonKinds.Length.Write(json, thread.Lead);
        }
        else
        {
            json.WritePropertyName(Designation);
            JsonKinds.Thread.Write(json, thread);
        }
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Property(Designation, OneOfTwo, JsonKinds.Thread);
        schema.Property(Lead, Travel, JsonKinds.Length);
    }

    private static ScrewThread? Thread(ObjectReader fields)
    {
        bool measured = fields.Find(Lead) is not null;
        bool designated = fields.Find(Designation) is not null;
        if (measured && designated)
        {
            fields.Refuse(Lead, "both \"thread\" and \"lead\"", "one of them");
            return null;
        }

        if (!measured)
        {
            return fields.Need(Designation, JsonKinds.Thread, out ScrewThread? thread) ? thread : null;
        }

        // The library checks a parameter here, not a property, and names it so.
        return fields.Need(Lead, JsonKinds.Length, out Length lead, "lead")
            ? fields.Make(() => ScrewThread.FromMeasuredLead(lead))
            : null;
    }
}
