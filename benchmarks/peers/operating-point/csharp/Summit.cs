using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>A top of a load within a step.</summary>
internal readonly record struct Summit(int Piece, double Place, double Low, Force Height, Force Curvature);
