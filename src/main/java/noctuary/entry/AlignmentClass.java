package noctuary.entry;

import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;

/** Table cells tell their alignment by class, such as {@code align-right}: the attribute is no longer valid HTML. */
final class AlignmentClass extends IndependentAttributeProviderFactory {
    @Override
    public AttributeProvider apply(LinkResolverContext context) {
        return (node, part, attributes) -> {
            String alignment = attributes.getValue("align");
            if (!alignment.isEmpty()) {
                attributes.remove("align");
                attributes.addValue("class", "align-" + alignment);
            }
        };
    }
}
