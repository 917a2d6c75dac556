package noctuary.advice;

import java.util.List;

/**
 * One part of a rig exchanged, side by side.
 *
 * @param part what it is called
 * @param columns the rig as it is first, then with each other such part, then the rigs that these come from
 * @param leftOut parts beyond the first few
 */
public record WhatIf(String part, List<Swap> columns, int leftOut) {
    public WhatIf {
        columns = List.copyOf(columns);
    }
}
