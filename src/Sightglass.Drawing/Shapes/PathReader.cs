using System.Collections.Immutable;
using System.Globalization;

namespace Sightglass.Drawing.Shapes;

/// <summary>Reads SVG path data into absolute segments.</summary>
internal sealed class PathReader(string text)
{
    private readonly ImmutableArray<PathSegment>.Builder _segments = ImmutableArray.CreateBuilder<PathSegment>();
    private int _at;
    private (double X, double Y) _here;
    private (double X, double Y) _start;
    private (double X, double Y) _control;
    private char _last;

    public PathData Read(out int? errorAt)
    {
        errorAt = null;
        char command = '\0';
        SkipSeparators();
        while (_at < text.Length)
        {
            int mark = _at;
            if (char.IsAsciiLetter(text[_at]))
            {
                command = text[_at++];
            }
            else
            {
                command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
            }

            if (!TryCommand(command))
            {
                errorAt = Math.Max(mark, _at);
                break;
            }

            SkipSeparators();
        }

        return new PathData(_segments.ToImmutable());
    }

    private bool TryCommand(char command)
    {
        char kind = char.ToUpperInvariant(command);
        int count = kind switch { 'M' or 'L' or 'T' => 2, 'H' or 'V' => 1, 'C' => 6, 'S' or 'Q' => 4, 'A' => 7, 'Z' => 0, _ => -1 };
        if (count < 0 || (_segments.Count == 0 && kind != 'M') || (kind == 'Z' && _last == 'Z'))
        {
            return false;
        }

        double[] n = new double[count];
        for (int i = 0; i < count; i++)
        {
            bool read = kind == 'A' && i is 3 or 4 ? TryFlag(out n[i]) : TryNumber(out n[i]);
            if (!read)
            {
                return false;
            }
        }

        if (char.IsLower(command))
        {
            MakeAbsolute(kind, n);
        }

        Add(kind, n);
        return true;
    }

    private void MakeAbsolute(char kind, double[] n)
    {
        if (kind == 'V')
        {
            n[0] += _here.Y;
            return;
        }

        for (int i = kind == 'A' ? 5 : 0; i < n.Length; i++)
        {
            bool vertical = kind == 'A' ? i == 6 : i % 2 == 1;
            n[i] += vertical ? _here.Y : _here.X;
        }
    }

    private void Add(char kind, double[] n)
    {
        switch (kind)
        {
            case 'H':
                Emit('L', [n[0], _here.Y], null);
                break;
            case 'V':
                Emit('L', [_here.X, n[0]], null);
                break;
            case 'S':
                (double X, double Y) c = _last is 'C' or 'S' ? Reflected() : _here;
                Emit('C', [c.X, c.Y, n[0], n[1], n[2], n[3]], (n[0], n[1]));
                break;
            case 'T':
                (double X, double Y) q = _last is 'Q' or 'T' ? Reflected() : _here;
                Emit('Q', [q.X, q.Y, n[0], n[1]], q);
                break;
            case 'C':
                Emit('C', n, (n[2], n[3]));
                break;
            case 'Q':
                Emit('Q', n, (n[0], n[1]));
                break;
            default:
                Emit(kind, n, null);
                break;
        }

        _last = kind;
    }

    private void Emit(char kind, double[] n, (double X, double Y)? control)
    {
        _segments.Add(new PathSegment(kind, n));
        _here = kind == 'Z' ? _start : (n[^2], n[^1]);
        _control = control ?? _here;
        if (kind == 'M')
        {
            _start = _here;
        }
    }

    private (double X, double Y) Reflected() => ((2 * _here.X) - _control.X, (2 * _here.Y) - _control.Y);

    private void SkipSeparators()
    {
        while (_at < text.Length && (char.IsWhiteSpace(text[_at]) || text[_at] == ','))
        {
            _at++;
        }
    }

    private bool TryFlag(out double flag)
    {
        SkipSeparators();
        flag = 0;
        if (_at < text.Length && text[_at] is '0' or '1')
        {
            flag = text[_at++] - '0';
            return true;
        }

        return false;
    }

    private bool TryNumber(out double number)
    {
        SkipSeparators();
        int end = _at;
        bool dot = false;
        if (end < text.Length && text[end] is '-' or '+')
        {
            end++;
        }

        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] == '.' && !dot)))
        {
            dot |= text[end++] == '.';
        }

        if (!double.TryParse(text.AsSpan(_at, end - _at), NumberStyles.Float, CultureInfo.InvariantCulture, out number) || !double.IsFinite(number))
        {
            return false;
        }

        _at = end;
        return true;
    }
}
