package comparand.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaMethodCall;

/** Calls of a method by its name, on any type whose name starts as given. */
final class MethodNamed extends DescribedPredicate<JavaMethodCall> {

    private final String method;
    private final String owner;

    MethodNamed(String method, String owner) {
        super(owner + "#" + method);
        this.method = method;
        this.owner = owner;
    }

    @Override
    public boolean test(JavaMethodCall call) {
        return call.getName().equals(method) && call.getTargetOwner().getName().startsWith(owner);
    }
}
