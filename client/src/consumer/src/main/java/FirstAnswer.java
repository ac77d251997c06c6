import dev.underprop.api.model.*;
import dev.underprop.client.*;
import java.util.List;

class FirstAnswer {
    public static void main(String[] args) {
        ApiClient client = new ApiClient();
        client.updateBaseUri(args[0]);
        JobPlan plan = new JobPlan().basis("us-asd").addSituationsItem(new Situation().name("shored"))
                .floor(new Floor()
                        .joists(new JoistSet().size("2x10").species("hem-fir").grade("No.2").moisture("dry")
                                .count(8).spacing("16 in").start("0 ft").length("15 ft"))
                        .addBearingsItem(new Bearing().name("sill").at("1.75 in").length("3.5 in").kind("rigid"))
                        .addBearingsItem(new Bearing().name("girder").at("14 ft 6 in").length("3.5 in").kind("rigid"))
                        .addLoadsItem(new Load().name("floor").kind("area").dead("12 psf").live("40 psf")))
                .addShoresItem(new Shore().name("A").at("3 ft 6 in")
                        .beam(new Beam().size("2x10").plies(3).species("hem-fir").grade("No.2").moisture("dry")
                                .start("-6 in").length("10 ft 4 in"))
                        .posts(List.of(post("A1", "0 ft"), post("A2", "4 ft 8 in"), post("A3", "9 ft 4 in"))));
        try {
            PlanCheck answer = new PlansApi(client).checkPlan(plan, "us", null, null);
            System.out.println(answer.getVerdict() + ": " + answer.getHeadline());
        } catch (ApiException e) {
            e.problem().ifPresentOrElse(problem -> System.out.println(problem.getErrors()), e::printStackTrace);
        }
    }

    private static Post post(String name, String at) { return new Post().name(name).at(at).height("6 ft 9 in"); }
}
