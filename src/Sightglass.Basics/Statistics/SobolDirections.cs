namespace Sightglass.Basics.Statistics;

/// <summary>
/// The first 32 dimensions of the direction numbers new-joe-kuo-6: S. Joe and F. Y. Kuo, 'Constructing Sobol sequences with better two-dimensional
/// projections', SIAM J. Sci. Comput. 30, 2635–2654 (2008). Data copyright (c) 2008 Frances Y. Kuo and Stephen Joe; their licence stands in NOTICE.
/// </summary>
internal static class SobolDirections
{
    /// <summary>For each dimension: its primitive polynomial, one bit a coefficient, and the first direction numbers (none for the first dimension).</summary>
    public static readonly (uint Polynomial, uint[] First)[] All =
    [
        (1, []),
        (3, [1]),
        (7, [1, 3]),
        (11, [1, 3, 1]),
        (13, [1, 1, 1]),
        (19, [1, 1, 3, 3]),
        (25, [1, 3, 5, 13]),
        (37, [1, 1, 5, 5, 17]),
        (41, [1, 1, 5, 5, 5]),
        (47, [1, 1, 7, 11, 19]),
        (55, [1, 1, 5, 1, 1]),
        (59, [1, 1, 1, 3, 11]),
        (61, [1, 3, 5, 5, 31]),
        (67, [1, 3, 3, 9, 7, 49]),
        (91, [1, 1, 1, 15, 21, 21]),
        (97, [1, 3, 1, 13, 27, 49]),
        (103, [1, 1, 1, 15, 7, 5]),
        (109, [1, 3, 1, 15, 13, 25]),
        (115, [1, 1, 5, 5, 19, 61]),
        (131, [1, 3, 7, 11, 23, 15, 103]),
        (137, [1, 3, 7, 13, 13, 15, 69]),
        (143, [1, 1, 3, 13, 7, 35, 63]),
        (145, [1, 3, 5, 9, 1, 25, 53]),
        (157, [1, 3, 1, 13, 9, 35, 107]),
        (167, [1, 3, 1, 5, 27, 61, 31]),
        (171, [1, 1, 5, 11, 19, 41, 61]),
        (185, [1, 3, 5, 3, 3, 13, 69]),
        (191, [1, 1, 7, 13, 1, 19, 1]),
        (193, [1, 3, 7, 5, 13, 19, 59]),
        (203, [1, 1, 3, 9, 25, 29, 41]),
        (211, [1, 3, 5, 13, 23, 1, 55]),
        (213, [1, 3, 7, 3, 13, 59, 17]),
    ];
}
