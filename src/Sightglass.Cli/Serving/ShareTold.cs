namespace Sightglass.Cli.Serving;

/// <summary>How a phone is paired.</summary>
/// <param name="Code">Eight digits, for one phone.</param>
/// <param name="Fingerprint">SHA-256 of the certificate.</param>
/// <param name="Qr">For a terminal that knows colours.</param>
internal sealed record ShareTold(string Address, string Code, string Fingerprint, string Qr);
