namespace Sightglass.Web.Room.Instructor;

/// <summary>How the cases of a drill are given to several people.</summary>
public enum CaseChoice
{
    /// <summary>The same for everybody, each in a world of their own.</summary>
    Same,

    /// <summary>Each their own.</summary>
    Own,

    /// <summary>All in one world, as its different people.</summary>
    Together,
}
