using System.Text;
using System.Text.Json.Serialization;
using TreadmillMech.Json.Shapes;
using TreadmillMech.Parts;

namespace TreadmillMech.Json;

/// <summary>A machine as it stands in a file of its own: the machine, and the name it goes by.</summary>
/// <remarks>
/// The machine is written as in a visit file, so that one can be pasted into the other; see <see cref="VisitFile"/> for the
/// rules.
/// </remarks>
[JsonConverter(typeof(TreadmillJsonConverter<MachineFile>))]
public sealed record MachineFile
{
    /// <summary>Name and version of the format, as the file's field "format" says it.</summary>
    public const string Format = "treadmillmech-machine/1";

    /// <summary>The name that the machine goes by: 1 to 80 printable characters, without blanks around them.</summary>
    /// <exception cref="ArgumentException">The name is empty, too long, or not printable.</exception>
    public required string MachineName
    {
        get;
        init => field = FileName.Checked(value, nameof(MachineName));
    }

    /// <summary>The machine.</summary>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public required Treadmill Machine
    {
        get;
        init => field = value ?? throw new ArgumentNullException(nameof(value), "Machine is required.");
    }

    /// <summary>What decides how the machine's speeds change: flywheel, armature, controller; null where not known.</summary>
    public DriveDynamics? Dynamics { get; init; }

    /// <summary>The JSON schema of the format (draft 2020-12): names, words and units, but not ranges.</summary>
    public static string Schema =>
        DocumentText.Schema(
            MachineFileShape.File,
            Format,
            "A motorised running machine: its parts, and what is known of them."
        );

    /// <summary>Reads a machine file.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static Parsed<MachineFile> Read(string json) => ReadUtf8(DocumentText.Utf8(json));

    /// <summary>Reads a machine file.</summary>
    /// <param name="utf8">Bytes of the file, with or without a byte order mark.</param>
    public static Parsed<MachineFile> ReadUtf8(ReadOnlySpan<byte> utf8) =>
        DocumentText.Read(MachineFileShape.File, FileFormats.Machine, utf8.ToArray());

    /// <summary>Writes the file.</summary>
    public string Write() => Encoding.UTF8.GetString(WriteUtf8());

    /// <summary>Writes the file as bytes, without a byte order mark.</summary>
    public byte[] WriteUtf8() => DocumentText.Write(MachineFileShape.File, this);

    /// <summary>The machine's name and the machine in words, invariant.</summary>
    public override string ToString() => $"{MachineName}: {Machine}";
}
