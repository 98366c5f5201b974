using CsCheck;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Basics.Tests.Formulas;

namespace Sightglass.Basics.Tests.Tapes;

/// <summary>What is on a tape comes to the bits of the arithmetic that was noted.</summary>
public sealed class TapeProperties
{
    private static readonly NameTable s_names = Scopes.Fuel();

    private static readonly Gen<double> s_number = Gen.OneOf(Gen.Double[-1000, 1000], Gen.OneOf(0.0, -0.0, 1.0, double.NaN, double.PositiveInfinity, 1e-310));

    private static readonly double[] s_table = [3, -0.0, 7.25, double.NaN];

    [Fact]
    public void Run_AnyFormula_ComesToTheFormula() =>
        Gen.Select(FormulaTexts.Any, s_number.Array[Lanes.Count * s_names.Count]).Holds((text, numbers) =>
        {
            DiagnosticList found = [];
            Formula formula = FormulaParser.Parse(text, Span.None, s_names, found, FormulaKind.Any)!;
            LaneValues eight = new([.. numbers.Chunk(s_names.Count)]);
            Leaves leaves = new();
            Noted noted = formula.Evaluate<Noted, Leaves>(ref leaves);
            MustBe(formula.Evaluate<Lanes, LaneValues>(ref eight), leaves.Run(noted, id => eight.ValueOf(id)), text);
        });

    [Fact]
    public void Run_EveryOperation_ComesToItsBits() =>
        Gen.Select(s_number.Array[Lanes.Count], s_number.Array[Lanes.Count], Gen.Int[0, 18]).Holds((a, b, op) =>
        {
            Lanes[] given = [Of(a), Of(b)];
            Leaves leaves = new();
            Noted noted = Do(op, leaves.ValueOf(0), leaves.ValueOf(1));
            MustBe(Do(op, given[0], given[1]), leaves.Run(noted, id => given[id]), $"operation {op}");

            // Constants alone are worked out while they are noted.
            Noted constant = Do(op, Noted.Of(a[0]), Noted.Of(b[0]));
            MustBe(Do(op, Lanes.Of(a[0]), Lanes.Of(b[0])), leaves.Run(constant, id => given[id]), $"operation {op} of constants");
        });

    /// <summary>What is noted twice is one step.</summary>
    [Fact]
    public void Note_TheSameAgain_IsTheSameStep()
    {
        TapeWriter writer = new();
        Noted a = writer.Leaf(), b = writer.Leaf();
        int first = writer.StepOf((a * b) + Noted.Of(2));
        int length = writer.ToTape().Length;
        Assert.Equal(first, writer.StepOf((a * b) + Noted.Of(2)));
        Assert.Equal(length, writer.ToTape().Length);
        Assert.NotEqual(first, writer.StepOf((b * a) + Noted.Of(2)));
        Assert.NotEqual(writer.StepOf(Noted.Of(0.0)), writer.StepOf(Noted.Of(-0.0)));
        Assert.Throws<ArgumentException>(() => new TapeWriter().StepOf(a));
    }

    private static T Do<T>(int op, T a, T b)
        where T : struct, IReal<T> => op switch
        {
            0 => a + b,
            1 => a - b,
            2 => a * b,
            3 => a / b,
            4 => -a,
            5 => T.Sqrt(a),
            6 => T.Abs(a),
            7 => T.Fma(a, b, T.Of(0.1)),
            8 => T.Min(a, b),
            9 => T.Max(a, b),
            10 => T.Select(T.Less(a, b), a, b),
            11 => T.Select(T.LessOrEqual(a, b), b, T.Of(4)),
            12 => T.And(a, T.Less(b, T.Of(1))),
            13 => T.Or(a, T.Less(b, T.Of(1))),
            14 => T.Floor(T.Min(T.Max(a, T.Of(-1000)), T.Of(1000))),
            15 => T.CbrtSeed(T.Abs(a)),
            16 => T.ScaleByPowerOfTwo(T.Of(1.5), T.Floor(T.Min(T.Max(a, T.Of(-9)), T.Of(9)))),
            17 => T.ExponentOf(T.Abs(a)) + T.SignificandOf(T.Abs(b)),
            _ => T.Lookup(s_table, T.Floor(T.Min(T.Max(a, T.Of(0)), T.Of(3)))),
        };

    private static Lanes Of(double[] v) => new(System.Runtime.Intrinsics.Vector512.Create(v));

    private static void MustBe(Lanes expected, Lanes seen, string what)
    {
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            Assert.True(Bits(expected[lane]) == Bits(seen[lane]), $"{what}, lane {lane}: {expected[lane]:R}, on the tape {seen[lane]:R}");
        }
    }

    private static long Bits(double x) => double.IsNaN(x) ? long.MinValue : BitConverter.DoubleToInt64Bits(x);

    /// <summary>A leaf for each id that is asked for.</summary>
    private readonly struct Leaves() : IFormulaValues<Noted>
    {
        private readonly TapeWriter _writer = new();
        private readonly SortedDictionary<int, Noted> _leaves = [];

        public Noted ValueOf(int id)
        {
            if (!_leaves.TryGetValue(id, out Noted leaf))
            {
                _leaves.Add(id, leaf = _writer.Leaf());
            }

            return leaf;
        }

        public Lanes Run(Noted root, Func<int, Lanes> given)
        {
            int step = _writer.StepOf(root);
            Tape tape = _writer.ToTape();
            Span<Lanes> room = new LaneRoom(tape.Length).All;
            tape.Prepare(room);
            foreach ((int id, Noted leaf) in _leaves)
            {
                room[_writer.StepOf(leaf)] = given(id);
            }

            tape.Run([.. Enumerable.Range(0, tape.Length).Where(i => !tape.IsGiven(i))], room);
            return room[step];
        }
    }
}
