namespace Sightglass.Network.Phasors;

/// <summary>Matrices for <see cref="LoadFlowBuilder.AddLine"/> from what data sheets tell.</summary>
public static class LineImpedance
{
    /// <summary>Ω of a length.</summary>
    /// <param name="perMetre">Ω/m, one row after the other.</param>
    public static Phasor[] OfLength(ReadOnlySpan<Phasor> perMetre, double metres)
    {
        Phasor[] whole = new Phasor[perMetre.Length];
        for (int i = 0; i < whole.Length; i++)
        {
            whole[i] = metres * perMetre[i];
        }

        return whole;
    }

    /// <summary>
    /// Three wires that are alike, from what a balanced system of currents meets and what three equal ones meet: own (z₀ + 2z₁)/3, mutual (z₀ − z₁)/3. Source: symmetrical components (Fortescue
    /// 1918; any text).
    /// </summary>
    public static Phasor[] OfSequences(Phasor positive, Phasor zero)
    {
        Phasor own = (1.0 / 3) * (zero + (2 * positive));
        Phasor mutual = (1.0 / 3) * (zero - positive);
        return [own, mutual, mutual, mutual, own, mutual, mutual, mutual, own];
    }

    /// <summary>
    /// The wires that are left when others are joined to the frame at both ends, a neutral or a shield: z_ij − z_in·z_nj/z_nn for each. Source: Kron's reduction (any text of distribution systems).
    /// </summary>
    /// <param name="impedance">Of all wires, one row after the other, those to be taken out last.</param>
    /// <param name="left">How many stay.</param>
    public static Phasor[] WithoutGrounded(ReadOnlySpan<Phasor> impedance, int left)
    {
        int size = (int)Math.Sqrt(impedance.Length);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(left, size);
        Phasor[] all = impedance.ToArray();
        for (int n = size - 1; n >= left; n--)
        {
            Phasor inverse = Phasor.Inverse(all[(n * size) + n]);
            for (int i = 0; i < n; i++)
            {
                Phasor factor = all[(i * size) + n] * inverse;
                for (int j = 0; j < n; j++)
                {
                    all[(i * size) + j] -= factor * all[(n * size) + j];
                }
            }
        }

        Phasor[] rest = new Phasor[left * left];
        for (int i = 0; i < rest.Length; i++)
        {
            rest[i] = all[(i / left * size) + (i % left)];
        }

        return rest;
    }
}
