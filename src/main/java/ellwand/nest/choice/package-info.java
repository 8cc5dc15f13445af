/** Which way of serving and heading is best: the OptaPlanner model and its phases. */
package ellwand.nest.choice;
