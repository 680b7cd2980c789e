namespace Analytics.Notebooks.Look;

/// <summary>The look of live charts, kept once in a page: a script sets it as <c>layout.template</c> of every chart.</summary>
public static class PlotTemplate
{
    /// <summary>A Plotly template as JSON.</summary>
    public static string Json { get; } = "{\"layout\":{" + string.Join(',',
        $"\"font\":{Font(13, Palette.Ink)}",
        "\"autosize\":true,\"showlegend\":false,\"hovermode\":\"closest\",\"dragmode\":false",
        $"\"paper_bgcolor\":\"{Palette.Paper}\",\"plot_bgcolor\":\"{Palette.Paper}\"",
        $"\"colorway\":[\"{string.Join("\",\"", Palette.Series)}\"]",
        $"\"hoverlabel\":{{\"bgcolor\":\"{Palette.Ink}\",\"bordercolor\":\"{Palette.Ink}\",\"font\":{Font(13, Palette.Paper)},\"align\":\"left\",\"namelength\":-1}}",
        $"\"xaxis\":{AxisLook}",
        $"\"yaxis\":{AxisLook}") + "}}";

    private static string AxisLook
        => $"{{\"gridcolor\":\"{Palette.Rule}\",\"zeroline\":false,\"ticks\":\"\",\"tickfont\":{Font(12, Palette.Muted)},\"title\":{{\"font\":{Font(13, Palette.Muted)}}}}}";

    private static string Font(int size, string colour)
        => $"{{\"family\":\"system-ui, Segoe UI, Roboto, Noto Sans, sans-serif\",\"size\":{size},\"color\":\"{colour}\"}}";
}
