using System.Globalization;
using System.IO.MemoryMappedFiles;
using System.Runtime.InteropServices;
using TreadmillMech.Model;

namespace TreadmillMech.Peers;

/// <summary>The columns that make-data.py wrote, mapped as they lie, and room for the outputs.</summary>
internal sealed unsafe class Columns
{
    private const int Line = 64;
    private readonly Dictionary<string, nint> inputs = [];
    private readonly Dictionary<string, nint> outputs = [];
    private readonly Dictionary<string, double> constants = [];

    internal Columns(string folder)
    {
        foreach (string line in File.ReadLines(Path.Combine(folder, "manifest.txt")))
        {
            string[] words = line.Split(' ');
            switch (words[0])
            {
                case "rows":
                    Rows = int.Parse(words[1], CultureInfo.InvariantCulture);
                    break;
                case "input" when words[2] == "column":
                    inputs.Add(words[1], Map(Path.Combine(folder, words[1] + ".f64")));
                    break;
                case "input":
                    constants.Add(words[1], double.Parse(words[2], CultureInfo.InvariantCulture));
                    break;
                case "output":
                    // Zeroed room of this size comes from the system page by page, when it is first written.
                    nint room = (nint)NativeMemory.AllocZeroed(((nuint)Rows * sizeof(double)) + Line);
                    outputs.Add(words[1], (room + Line - 1) / Line * Line);
                    break;
                default:
                    break;
            }
        }
    }

    internal int Rows { get; }

    internal IEnumerable<Input> Inputs => Model.Inputs.All.Where(input => inputs.ContainsKey(input.Name));

    internal IEnumerable<Output> Outputs => Model.Outputs.All.Where(output => outputs.ContainsKey(output.Name));

    internal double Constant(Input input) => constants[input.Name];

    internal bool IsConstant(Input input) => constants.ContainsKey(input.Name);

    internal double* Of(Input input) => (double*)inputs[input.Name];

    internal double* Of(Output output) => (double*)outputs[output.Name];

    internal void Write(string folder, int rows)
    {
        foreach (Output output in Outputs)
        {
            using FileStream file = File.Create(Path.Combine(folder, output.Name + ".f64"));
            file.Write(new ReadOnlySpan<byte>((void*)Of(output), rows * sizeof(double)));
        }
    }

    private static nint Map(string path)
    {
        // Mapped for as long as the process lives.
        MemoryMappedFile file = MemoryMappedFile.CreateFromFile(
            path,
            FileMode.Open,
            null,
            0,
            MemoryMappedFileAccess.Read
        );
        MemoryMappedViewAccessor view = file.CreateViewAccessor(0, 0, MemoryMappedFileAccess.Read);
        byte* at = null;
        view.SafeMemoryMappedViewHandle.AcquirePointer(ref at);
        return (nint)at;
    }
}
