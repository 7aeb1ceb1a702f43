using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>A load and its first four derivatives by the phase [N].</summary>
internal struct FootJet<T>
    where T : struct, IReal<T>
{
    internal T F0;
    internal T F1;
    internal T F2;
    internal T F3;
    internal T F4;
}
