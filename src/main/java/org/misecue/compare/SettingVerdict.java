package org.misecue.compare;

import java.util.List;
import org.misecue.recipe.Setting;

/** The verdict on one written oven temperature, duration, tin or yield. */
public record SettingVerdict(
        Setting setting, Verdict verdict, Confidence confidence, String reason, List<Evidence> evidence) {}
