namespace Analytics.Runner.Proofs;

/// <summary>Names of the parts every page has; those that show results go by the anchors of their cells.</summary>
public static class PartNames
{
    /// <summary>Policy, title and styles.</summary>
    public const string Head = "head";

    /// <summary>From the beginning of the body to the first result.</summary>
    public const string Opening = "opening";

    /// <summary>The code of the notebook.</summary>
    public const string Code = "code";

    /// <summary>The foot, up to the time.</summary>
    public const string Foot = "foot";

    /// <summary>What follows the time in the foot.</summary>
    public const string FootEnd = "foot-end";

    /// <summary>The data of the charts and the library that draws them.</summary>
    public const string Charts = "charts";

    /// <summary>The page's script.</summary>
    public const string Script = "script";

    /// <summary>Whether a part shows results.</summary>
    /// <param name="name">Name of the part.</param>
    public static bool IsResult(string name) => name is not (Head or Opening or Code or Foot or FootEnd or Charts or Script);

    /// <summary>What a reader would call a part.</summary>
    /// <param name="name">Name of the part.</param>
    public static string InWords(string name) => name switch
    {
        Head => "the head of the page (title and styles)",
        Opening => "the beginning of the page",
        Code => "the code appendix",
        Foot or FootEnd => "the foot of the page",
        Charts => "the data of the charts",
        Script => "the script of the page",
        _ => name,
    };
}
