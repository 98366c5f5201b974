using Sightglass.Basics.Numbers;

namespace Sightglass.Basics.Tapes;

/// <summary>
/// A number that writes down what becomes of it: arithmetic that is generic over its number, run once with this one, is on a tape. Constants are worked out at once,
/// with the same bits.
/// </summary>
public readonly struct Noted : IReal<Noted>
{
    internal readonly TapeWriter? Writer;
    internal readonly int Step;
    internal readonly double Constant;

    internal Noted(TapeWriter writer, int step) => (Writer, Step) = (writer, step);

    private Noted(double constant) => Constant = constant;

    public static Noted operator +(Noted a, Noted b) => Note(TapeOp.Add, a, b);

    public static Noted operator -(Noted a, Noted b) => Note(TapeOp.Subtract, a, b);

    public static Noted operator *(Noted a, Noted b) => Note(TapeOp.Multiply, a, b);

    public static Noted operator /(Noted a, Noted b) => Note(TapeOp.Divide, a, b);

    public static Noted operator -(Noted a) => Note(TapeOp.Negate, a);

    public static Noted Of(double value) => new(value);

    public static Noted Sqrt(Noted a) => Note(TapeOp.Sqrt, a);

    public static Noted Abs(Noted a) => Note(TapeOp.Abs, a);

    public static Noted Fma(Noted a, Noted b, Noted c) => Note(TapeOp.Fma, a, b, c);

    public static Noted Min(Noted a, Noted b) => Note(TapeOp.Min, a, b);

    public static Noted Max(Noted a, Noted b) => Note(TapeOp.Max, a, b);

    public static Noted Less(Noted a, Noted b) => Note(TapeOp.Less, a, b);

    public static Noted LessOrEqual(Noted a, Noted b) => Note(TapeOp.LessOrEqual, a, b);

    public static Noted Select(Noted mask, Noted yes, Noted no) => Note(TapeOp.Select, mask, yes, no);

    public static Noted And(Noted a, Noted b) => Note(TapeOp.And, a, b);

    public static Noted Or(Noted a, Noted b) => Note(TapeOp.Or, a, b);

    public static Noted Floor(Noted a) => Note(TapeOp.Floor, a);

    public static Noted CbrtSeed(Noted a) => Note(TapeOp.CbrtSeed, a);

    public static Noted ScaleByPowerOfTwo(Noted a, Noted n) => Note(TapeOp.ScaleByPowerOfTwo, a, n);

    public static Noted ExponentOf(Noted a) => Note(TapeOp.ExponentOf, a);

    public static Noted SignificandOf(Noted a) => Note(TapeOp.SignificandOf, a);

    public static Noted Lookup(ReadOnlySpan<double> table, Noted index) =>
        index.Writer is { } writer ? writer.Add(new(TapeOp.Lookup, index.Step, writer.Table(table))) : new(Scalar.Lookup(table, new(index.Constant)).V);

    private static Noted Note(TapeOp op, Noted a) =>
        a.Writer is { } writer ? writer.Add(new(op, a.Step)) : new(Tape.Apply<Scalar>(op, new(a.Constant), default, default).V);

    private static Noted Note(TapeOp op, Noted a, Noted b) =>
        (a.Writer ?? b.Writer) is { } writer
            ? writer.Add(new(op, writer.StepOf(a), writer.StepOf(b)))
            : new(Tape.Apply<Scalar>(op, new(a.Constant), new(b.Constant), default).V);

    private static Noted Note(TapeOp op, Noted a, Noted b, Noted c) =>
        (a.Writer ?? b.Writer ?? c.Writer) is { } writer
            ? writer.Add(new(op, writer.StepOf(a), writer.StepOf(b), writer.StepOf(c)))
            : new(Tape.Apply<Scalar>(op, new(a.Constant), new(b.Constant), new(c.Constant)).V);
}
