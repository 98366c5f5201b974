namespace Sightglass.Web.Share;

/// <summary>What becomes of a try to pair.</summary>
/// <param name="Token">What the phone shows from then on; null where it is not paired.</param>
/// <param name="MustWait">Too many tries: nothing was looked at.</param>
public sealed record PairAnswer(string? Token, bool MustWait);
