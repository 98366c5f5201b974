namespace Sightglass.Web.Debrief;

/// <summary>Sorts of act that can be written down for a what-if.</summary>
public enum WhatIfDeed
{
    Walk,
    Put,
    Ask,
    GiveBack,
    Tell,
    Report,
    Done,
}
