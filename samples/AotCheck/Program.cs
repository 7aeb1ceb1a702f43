// What this program proves: the library gives the same numbers and the same words when it is compiled ahead of time to
// native code, with unused code trimmed away, as it gives under the just-in-time compiler.
//
// It goes through every room of the library - parts in several units, operating points of every kind of machine,
// derivatives and derivatives of derivatives, estimates from readings (linear algebra), a whole visit, the machine in time,
// studies, refusals - and prints
// one line for each result, its name first, with all digits. There is no clock, no random number and no culture in it:
// print the lines once with `dotnet run`, once from the native program, and compare the two files.

using AotCheck;

Report report = new();
PartsRoom.Visit(report);
OperatingPointRoom.Visit(report);
ReasonsRoom.Visit(report);
NumbersRoom.Visit(report);
LawsRoom.Visit(report);
ServiceRoom.Visit(report);
VisitRoom.Visit(report);
TransientRoom.Visit(report);
StudiesRoom.Visit(report);
report.Print(Console.Out);
