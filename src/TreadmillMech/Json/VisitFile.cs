using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Serialization;
using TreadmillMech.Json.Shapes;
using TreadmillMech.Parts;
using TreadmillMech.Service;

namespace TreadmillMech.Json;

/// <summary>A visit as it stands in a file: the visit, and the name its machine goes by.</summary>
/// <remarks>
/// <para>
/// The file is JSON. Quantities are text with a unit, "20 in" or "118 kg", with a decimal point and no other mark;
/// frictions and counts are plain numbers; days are "2026-03-14". No culture has a say in it. A field that is not known by
/// the format is refused by its name, and so are commas, NaN, infinities and units of another dimension.
/// </para>
/// <para>
/// What is written is read as the same visit again, to the last bit, with two exceptions that the format refuses on purpose:
/// a current read with a clamp that cannot see it (alternating at the motor's lead, direct at a mains lead), and days before
/// 1950 or after 2199.
/// </para>
/// </remarks>
[JsonConverter(typeof(TreadmillJsonConverter<VisitFile>))]
public sealed record VisitFile
{
    /// <summary>Name and version of the format, as the file's field "format" says it.</summary>
    public const string Format = "treadmillmech-visit/1";

    /// <summary>The name that the machine goes by: 1 to 80 printable characters, without blanks around them.</summary>
    /// <exception cref="ArgumentException">The name is empty, too long, or not printable.</exception>
    public required string MachineName
    {
        get;
        init => field = FileName.Checked(value, nameof(MachineName));
    }

    /// <summary>The visit.</summary>
    /// <exception cref="ArgumentNullException">The visit is null.</exception>
    public required Visit Visit
    {
        get;
        init => field = value ?? throw new ArgumentNullException(nameof(value), "Visit is required.");
    }

    /// <summary>What decides how the machine's speeds change: flywheel, armature, controller; null where not known.</summary>
    public DriveDynamics? Dynamics { get; init; }

    /// <summary>The JSON schema of the format (draft 2020-12): names, words and units, but not ranges.</summary>
    public static string Schema =>
        DocumentText.Schema(
            VisitShape.File,
            Format,
            "A service visit to a motorised running machine: the machine, the demand it is tested under, and what was "
                + "read and done, in order."
        );

    /// <summary>All fields that a visit file may hold, object by object.</summary>
    public static ImmutableArray<FormatField> Fields => FormatFields.Visit;

    /// <summary>All units that quantities may be written in.</summary>
    public static ImmutableArray<FormatUnits> Units => FormatFields.Units;

    /// <summary>Reads a visit file.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<VisitFile> Read(string json) => ReadUtf8(DocumentText.Utf8(json));

    /// <summary>Reads a visit file.</summary>
    /// <param name="utf8">Bytes of the file, with or without a byte order mark.</param>
    public static Parsed<VisitFile> ReadUtf8(ReadOnlySpan<byte> utf8) =>
        DocumentText.Read(VisitShape.File, FileFormats.Visit, utf8.ToArray());

    /// <summary>Writes the file.</summary>
    public string Write() => Encoding.UTF8.GetString(WriteUtf8());

    /// <summary>Writes the file as bytes, without a byte order mark.</summary>
    public byte[] WriteUtf8() => DocumentText.Write(VisitShape.File, this);

    /// <summary>The machine's name and the visit in words, invariant.</summary>
    public override string ToString() => $"{MachineName}: {Visit}";
}
