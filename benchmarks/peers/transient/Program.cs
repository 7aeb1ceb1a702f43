using System.Globalization;
using TreadmillMech.Peers;

// Reads requests line by line and answers each with a line, so that the script beside this project can take turns with
// other solvers: "rosenbrock CASE TOLERANCE", "lanes CASE TOLERANCE", "rk4 CASE STEPS", "mathnet CASE STEPS", each
// followed by how often to repeat it.
// Answer: the least milliseconds, steps, bytes allocated, then belt speed at ten even times.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
while (Console.ReadLine() is { Length: > 0 } line)
{
    string[] words = line.Split(' ');
    double number = double.Parse(words[2], CultureInfo.InvariantCulture);
    Work work = new(words[1]);
    Outcome best = work.Do(words[0], number);
    for (int i = 1; i < int.Parse(words[3], CultureInfo.InvariantCulture); i++)
    {
        Outcome again = work.Do(words[0], number);
        best = again.Milliseconds < best.Milliseconds ? again : best;
    }

    Console.WriteLine(
        $"{best.Milliseconds:R} {best.Steps} {best.Bytes} {string.Join(' ', best.Speeds.Select(v => v.ToString("R")))}"
    );
}
