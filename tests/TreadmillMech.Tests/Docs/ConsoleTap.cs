using System.Globalization;
using System.Text;

namespace TreadmillMech.Tests.Docs;

/// <summary>Catches what one program prints, and lets through what others print at the same time.</summary>
internal sealed class ConsoleTap : TextWriter
{
    private static readonly AsyncLocal<StringWriter?> Caught = new();

    private static readonly Lazy<ConsoleTap> Fitted = new(static () =>
    {
        ConsoleTap tap = new(Console.Out);
        Console.SetOut(tap);
        return tap;
    });

    private readonly TextWriter outside;

    private ConsoleTap(TextWriter outside)
        : base(CultureInfo.InvariantCulture) => this.outside = outside;

    public override Encoding Encoding => outside.Encoding;

    private TextWriter Now => Caught.Value ?? outside;

    /// <summary>What an action prints.</summary>
    internal static string Catch(Action action)
    {
        _ = Fitted.Value;
        using StringWriter printed = new(CultureInfo.InvariantCulture);
        Caught.Value = printed;
        try
        {
            action();
        }
        finally
        {
            Caught.Value = null;
        }

        return printed.ToString();
    }

    public override void Write(char value) => Now.Write(value);

    public override void Write(string? value) => Now.Write(value);

    public override void Write(char[] buffer, int index, int count) => Now.Write(buffer, index, count);

    public override void Flush() => Now.Flush();
}
