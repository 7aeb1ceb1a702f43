namespace TreadmillMech.Numbers.Integration;

/// <summary>
/// Coefficients of the method RODAS: six stages, order 4 with an embedded order 3, L-stable and stiffly accurate.
/// </summary>
/// <remarks>
/// Hairer and Wanner, Solving Ordinary Differential Equations II, 2nd ed. 1996, section IV.7, and the program RODAS that goes
/// with it, first set of coefficients, in the form that needs no product with the Jacobian. The orders of the solution, of
/// the embedded one and of dense output are measured in the tests.
/// </remarks>
internal static class Rodas
{
    internal const int Stages = 6;

    internal const double Gamma = 0.25;

    /// <summary>Places of the stages in the step.</summary>
    internal static ReadOnlySpan<double> Alpha => [0, 0.386, 0.21, 0.63, 1, 1];

    /// <summary>Sums of gamma in each stage: weights of the derivative by time.</summary>
    internal static ReadOnlySpan<double> GammaSum => [0.25, -0.1043, 0.1035, -0.0362, 0, 0];

    /// <summary>Weights of earlier stages in the argument of a stage, row after row below the diagonal.</summary>
    internal static ReadOnlySpan<double> A =>
        [
            1.544,
            0.9466785280815826,
            0.2557011698983284,
            3.314825187068521,
            2.896124015972201,
            0.9986419139977817,
            1.221224509226641,
            6.019134481288629,
            12.53708332932087,
            -0.6878860361058950,
            1.221224509226641,
            6.019134481288629,
            12.53708332932087,
            -0.6878860361058950,
            1,
        ];

    /// <summary>Weights of earlier stages on the right side of a stage, row after row below the diagonal.</summary>
    internal static ReadOnlySpan<double> C =>
        [
            -5.6688,
            -2.430093356833875,
            -0.2063599157091915,
            -0.1073529058151375,
            -9.594562251023355,
            -20.47028614809616,
            7.496443313967647,
            -10.24680431464352,
            -33.99990352819905,
            11.70890893206160,
            8.083246795921522,
            -7.981132988064893,
            -31.52159432874371,
            16.31930543123136,
            -6.058818238834054,
        ];

    /// <summary>First row of the weights of dense output.</summary>
    internal static ReadOnlySpan<double> DenseSquare =>
        [10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662];

    /// <summary>Second row of the weights of dense output.</summary>
    internal static ReadOnlySpan<double> DenseCube =>
        [-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872];
}
