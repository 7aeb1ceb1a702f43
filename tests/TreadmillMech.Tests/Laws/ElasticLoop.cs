using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Tests.Laws;

/// <summary>
/// An elastic loop as springs between nodes, solved as linear equations: an independent way to the tensions. Nothing
/// here knows of shares of a loop or of lengths worth a mounting.
/// </summary>
/// <remarks>
/// Node 0 sticks to the drive roller, the others find their places. Nodes are counted in the direction in which the
/// belt runs. A hub that gives way by d takes d from the spring on each of its sides.
/// </remarks>
internal sealed class ElasticLoop(int nodes, double length, double stiffness, double tension)
{
    private readonly Dictionary<int, double> loads = [];

    /// <summary>Travel of the drive roller's hub for each newton [m/N].</summary>
    internal double DriveHub { get; init; }

    /// <summary>Travel of the undriven roller's hub for each newton [m/N].</summary>
    internal double UndrivenHub { get; init; }

    /// <summary>Node on the undriven roller.</summary>
    internal int Undriven { get; init; } = nodes / 2;

    /// <summary>Distance of a node from the drive roller along the belt [m].</summary>
    internal double Place(int node) => length * node / nodes;

    /// <summary>Puts a load that resists the belt at a node.</summary>
    internal void Load(int node, double force) => loads[node] = loads.GetValueOrDefault(node) + force;

    /// <summary>Tension next behind and next ahead of the drive roller [N].</summary>
    internal (double Slack, double Tight) Solve()
    {
        int size = nodes + 2;
        double spring = stiffness * nodes / length;
        Matrix<double> equations = Matrix<double>.Build.Dense(size, size);
        Vector<double> right = Vector<double>.Build.Dense(size);

        // Node 0 does not move; at every other the spring ahead pulls more than the one behind, by the load.
        equations[0, 0] = 1;
        for (int node = 1; node < nodes; node++)
        {
            AddSpring(equations, node, node, spring);
            AddSpring(equations, node, node - 1, -spring);
            right[node] = loads.GetValueOrDefault(node);
        }

        Hub(equations, nodes, DriveHub * spring, 0, nodes - 1);
        Hub(equations, nodes + 1, UndrivenHub * spring, Undriven - 1, Undriven);
        Vector<double> moved = equations.Solve(right);
        return (tension + Stretch(moved, 0, spring), tension + Stretch(moved, nodes - 1, spring));
    }

    private void Hub(Matrix<double> equations, int row, double give, int firstSpring, int secondSpring)
    {
        equations[row, row] += 1;
        AddSpring(equations, row, firstSpring, -give);
        AddSpring(equations, row, secondSpring, -give);
    }

    private void AddSpring(Matrix<double> equations, int row, int index, double factor)
    {
        for (int column = 0; column < equations.ColumnCount; column++)
        {
            if (Part(index, column) is int part and not 0)
            {
                equations[row, column] += factor * part;
            }
        }
    }

    private double Stretch(Vector<double> moved, int index, double spring)
    {
        double stretch = 0;
        for (int column = 0; column < moved.Count; column++)
        {
            stretch += Part(index, column) * moved[column];
        }

        return spring * stretch;
    }

    // How far a spring lengthens when the node, or the hub, of a column moves by one.
    private int Part(int index, int column)
    {
        if (column == nodes)
        {
            return index == 0 || index == nodes - 1 ? -1 : 0;
        }

        if (column == nodes + 1)
        {
            return index == Undriven - 1 || index == Undriven ? -1 : 0;
        }

        return (column == (index + 1) % nodes ? 1 : 0) - (column == index ? 1 : 0);
    }
}
