using System.Text;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Shapes;
using TreadmillMech.Model;
using TreadmillMech.Studies;

namespace TreadmillMech.Json;

/// <summary>A machine under a demand as two tables: all inputs and all outputs, by the names of the tables.</summary>
/// <remarks>
/// The names are those of <see cref="Inputs"/> and <see cref="Outputs"/>: columns of a batch, rows of a study and fields here
/// are the same. A value that is not known says so in place of the number.
/// </remarks>
public static class MachineTables
{
    /// <summary>Name and version of the format, as the field "format" says it.</summary>
    public const string Format = "treadmillmech-tables/1";

    private const string InputsField = "inputs";
    private const string OutputsField = "outputs";

    private static readonly WordTable<string> Formats = new((Format, Format));

    /// <summary>Writes all inputs and outputs of a study.</summary>
    /// <param name="study">The machine under a demand, with the inputs that were set.</param>
    /// <exception cref="ArgumentNullException">The study is null.</exception>
    public static string Write(Study study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return Encoding.UTF8.GetString(
            DocumentText.Bytes(json =>
            {
                json.WriteStartObject();
                json.WriteString("format", Format);
                json.WriteStartObject(InputsField);
                foreach (Input input in Inputs.All)
                {
                    json.WritePropertyName(input.Name);
                    TableValues.Write(json, study.Value(input).Then(static value => value.Si), input.Unit);
                }

                json.WriteEndObject();
                json.WriteStartObject(OutputsField);
                foreach (Output output in Outputs.All)
                {
                    json.WritePropertyName(output.Name);
                    TableValues.Write(json, study.Value(output).Then(static value => value.Si), output.Unit);
                }

                json.WriteEndObject();
                json.WriteEndObject();
            })
        );
    }

    /// <summary>Sets the inputs that a text gives on a study; inputs it does not name, or says are missing, stay as they are.</summary>
    /// <param name="study">The study to start from.</param>
    /// <param name="json">A text with a field "inputs"; a field "outputs" is not read, for they follow from the inputs.</param>
    /// <exception cref="ArgumentNullException">The study or the text is null.</exception>
    public static Parsed<Study> Set(Study study, string json)
    {
        ArgumentNullException.ThrowIfNull(study);
        FileProblems problems = new();
        Study? changed = null;
        if (LocatedParser.Parse(DocumentText.Utf8(json), problems) is { } root)
        {
            ObjectReader document = new(root, problems);
            document.Need("format", Formats, out _);
            document.Find(OutputsField);
            changed = document.Find(InputsField) is { } inputs ? Set(study, inputs, problems) : study;
            document.Finish(study);
        }

        return new(changed, problems.InOrder());
    }

    private static Study Set(Study study, LocatedNode node, FileProblems problems)
    {
        ObjectReader fields = new(node, problems);
        foreach (Input input in Inputs.All)
        {
            if (
                fields.Find(input.Name) is { } value
                && value.Find(MissingKind.Why) is null
                && TableValues.Read(value, input.Unit, input.Range, problems, out double si)
            )
            {
                study = Changed(study, input, si, value, problems);
            }
        }

        fields.Finish(study);
        return study;
    }

    private static Study Changed(Study study, Input input, double si, LocatedNode node, FileProblems problems)
    {
        // A number that is there already need not be set; that way what a machine cannot have is not asked of it.
        if (study.Value(input).Is(out PhysicalValue now) && now.Si.Equals(si))
        {
            return study;
        }

        try
        {
            return study.With(input, PhysicalValue.Of(si, input.Unit));
        }
        catch (ArgumentException refused)
        {
            problems.Add(node, new(node.Shown, refused.Message));
            return study;
        }
    }
}
