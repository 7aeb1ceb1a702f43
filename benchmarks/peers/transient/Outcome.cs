namespace TreadmillMech.Peers;

internal sealed record Outcome(double Milliseconds, long Steps, long Bytes, double[] Speeds);
