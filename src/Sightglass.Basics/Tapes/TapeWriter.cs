namespace Sightglass.Basics.Tapes;

/// <summary>Takes down steps; what was taken down before is the same step.</summary>
public sealed class TapeWriter
{
    private readonly List<TapeStep> _steps = [];
    private readonly Dictionary<TapeStep, int> _places = [];
    private readonly List<double> _constants = [];
    private readonly Dictionary<long, int> _constantSteps = [];
    private readonly List<double[]> _tables = [];
    private int _leaves;

    /// <summary>A number that is given before each run.</summary>
    public Noted Leaf() => Add(new(TapeOp.Leaf, _leaves++));

    /// <summary>The number of the step that a number comes from.</summary>
    /// <exception cref="ArgumentException">It is on another tape.</exception>
    public int StepOf(Noted number)
    {
        if (number.Writer is not null)
        {
            return number.Writer == this ? number.Step : throw new ArgumentException("It is on another tape.", nameof(number));
        }

        // By its bits: there are two zeros, and masks are not numbers.
        long bits = BitConverter.DoubleToInt64Bits(number.Constant);
        if (!_constantSteps.TryGetValue(bits, out int step))
        {
            step = Add(new(TapeOp.Constant, _constants.Count)).Step;
            _constants.Add(number.Constant);
            _constantSteps.Add(bits, step);
        }

        return step;
    }

    /// <summary>All that was taken down so far.</summary>
    public Tape ToTape() => new([.. _steps], [.. _constants], [.. _tables]);

    internal Noted Add(TapeStep step)
    {
        if (!_places.TryGetValue(step, out int place))
        {
            place = _steps.Count;
            _steps.Add(step);
            _places.Add(step, place);
        }

        return new(this, place);
    }

    internal int Table(ReadOnlySpan<double> table)
    {
        for (int i = 0; i < _tables.Count; i++)
        {
            if (table.SequenceEqual(_tables[i]))
            {
                return i;
            }
        }

        _tables.Add(table.ToArray());
        return _tables.Count - 1;
    }
}
